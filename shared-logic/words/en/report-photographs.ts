import type { Harm } from '../../proof/originals'

/** What a report says of its photographs as evidence. */
export const reportPhotographs = {
  /** Under “Method and limits”, by what was looked at for the report. */
  method: {
    asTheyCameIn: 'Photographs are the surveyor’s, kept unaltered under their SHA-256 fingerprint and printed from reduced copies: every original was read anew when this report was issued, and found so.',
    notAll: 'Photographs are the surveyor’s, printed from reduced copies. Every original that was there and could be read was read anew when this report was issued and held to its SHA-256 fingerprint, and not all were found as they came in. {harmed}',
    /** After that, where the picture of one of them is printed. */
    fromCopies: 'Where the picture of one of these is printed, it is from the copy made before.',
    /** Of a survey that is only a file. */
    ofFile: 'Photographs are the surveyor’s, printed from reduced copies. The SHA-256 fingerprint is of each file as it was read for this report; the files stay with the surveyor.',
    fromTheCamera: 'Times and places “from the camera” are as the camera wrote them and are not verified.',
    ownClock: 'A time “by this program’s clock” is the instant a picture taken with the program’s own camera came in.',
  },
  /** On the first page, where it is to keep to one line, and in the window beside the report. */
  inShort: {
    one: 'Of one photograph the original was not found as it came in: see “Method and limits”.',
    many: 'Of {count} photographs the original was not found as it came in: see “Method and limits”.',
  },
  /** Above the register. */
  notAll: 'Not all originals were found as they came in. {harmed}',
  /** 'Original missing: 3, 5; not printed: 1.' */
  harmed: { printed: '{harm}: photographs {numbers}', printedOne: '{harm}: photograph {numbers}', unprinted: '{harm} of photographs not printed: {count}' },
  harms: { missing: 'Original missing', changed: 'Original changed', unreadable: 'Original not readable' } satisfies Record<Harm, string>,
  /** To the surveyor, by name, before it is issued: 'Original missing: “hub.jpg”, “strap.jpg” and 12 more'. */
  named: { harm: '{harm}: {names}', name: '“{name}”', more: '{names} and {count} more', withoutPicture: 'The copy of these is gone or changed too, so a box with words is printed in place of the picture: {names}' },
  /** Beneath the picture. */
  captions: {
    missing: 'Not as it came in: its original was missing when this report was issued.',
    changed: 'Not as it came in: its original had been changed when this report was issued.',
    unreadable: 'Not shown to be as it came in: its original could not be read when this report was issued.',
  } satisfies Record<Harm, string>,
  ownClock: '{time}, by this program’s clock',
}
