/** Headings, sentences and cautions of the report. */
export const reportWords = {} as const
