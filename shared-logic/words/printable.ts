/** Control characters, and the marks that turn the direction of writing and so can disguise a name. */
// oxlint-disable-next-line no-control-regex -- these are the characters to be removed
const unprintable = /[\u0000-\u001f\u007f-\u009f\u200e\u200f\u202a-\u202e\u2066-\u2069]/g

/** A name somebody else wrote, without what cannot be printed and without space around it. */
export const printable = (text: string): string => text.replaceAll(unprintable, '').trim()
