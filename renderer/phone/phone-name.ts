/** Parts of a browser's account of itself that tell nothing of the device. */
const empty = /^(?:linux|u|k|wv|mobile|tablet|x11|cpu\b.*|rv:.*|[a-z]{2}[-_][a-z]{2})$/i

/**
 * What to call this phone on the desktop: what the browser says of its device, without the parts that say nothing.
 * Empty where nothing is left; 80 characters at most.
 */
export const phoneNameFrom = (userAgent: string): string => {
  const said = /\(([^)]*)\)/.exec(userAgent)?.[1] ?? ''
  const parts = said.split(';').map((part) => part.replace(/\bbuild\/.*$/i, '').trim())
  return parts.filter((part) => part !== '' && !empty.test(part)).join(', ').slice(0, 80)
}
