import { randomBytes, timingSafeEqual } from 'node:crypto'

/** 256 bits, in letters that stand in an address. */
export const newSecret = (): string => randomBytes(32).toString('base64url')

/** Takes the same time wherever the two differ. */
export const same = (given: string, secret: string): boolean => {
  const a = Buffer.from(given)
  const b = Buffer.from(secret)
  return a.length === b.length && timingSafeEqual(a, b)
}

export const cookieOf = (header: string | undefined, name: string): string | undefined => {
  for (const part of (header ?? '').split(';')) {
    const at = part.indexOf('=')
    if (at > 0 && part.slice(0, at).trim() === name) return part.slice(at + 1).trim()
  }
  return undefined
}
