/** Marking up a photograph, and what marks say on the picture, in the report and to those who do not see them. */
export const markingWords = {
  open: 'Mark up',
  on: {
    length: '{length} ± {uncertainty}',
    noLength: 'length not known',
    known: 'known: {length}',
    marked: 'marked: {marks}',
    text: '“{text}”',
    kinds: { arrow: 'arrow', circle: 'circle', box: 'box', freehand: 'line drawn by hand' },
  },
} as const
