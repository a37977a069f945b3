/** Our own scheme: standard and secure, so that the policy's 'self' means it, and served by main alone. */
export const scheme = 'app'
const host = 'bunkwright'
export const startAddress = `${scheme}://${host}/`

/** Whether an address is one of our own window's. Origins of own schemes read 'null' outside Chromium, so the parts are compared. */
export const isOurAddress = (address: string): boolean => {
  const url = URL.parse(address)
  return url !== null && url.protocol === `${scheme}:` && url.host === host && url.username === '' && url.password === ''
}

/** The path within our address, without its leading stroke; undefined when the address is not ours. */
export const pathOf = (address: string): string | undefined => (isOurAddress(address) ? URL.parse(address)?.pathname.slice(1) : undefined)

/** Photographs and reports: what the window may hand to the person as a file. */
export const isRecordedAddress = (address: string): boolean => /^(?:photographs|reports)\//.test(pathOf(address) ?? '')
