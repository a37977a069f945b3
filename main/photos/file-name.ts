const longest = 255

/** Control characters, and the marks that turn the direction of writing and so can disguise a name. */
// oxlint-disable-next-line no-control-regex -- these are the characters to be removed
const unprintable = /[\u0000-\u001f\u007f-\u009f\u200e\u200f\u202a-\u202e\u2066-\u2069]/g

/** A photograph's file name without folders and without unprintable characters, at most 255 characters long, never empty. */
export const plainFileName = (given: string): string => {
  const name = (given.split(/[/\\]/).at(-1) ?? '').replaceAll(unprintable, '').trim()
  if (name === '' || name === '.' || name === '..') return 'photograph'
  return name.length <= longest ? name : name.slice(-longest)
}
