/** A file's size as a person reads it: '480 kB', '2.4 MB'. Bytes in, powers of ten as file managers show them. */
export const sayBytes = (bytes: number): string => (bytes < 1_000_000 ? `${Math.max(1, Math.round(bytes / 1000))} kB` : `${(bytes / 1_000_000).toFixed(1)} MB`)
