/** 128 random bits, in hex. `crypto.randomUUID` is not to be had on a page that came over plain HTTP; this is. */
export const newId = (): string => [...crypto.getRandomValues(new Uint8Array(16))].map((byte) => byte.toString(16).padStart(2, '0')).join('')
