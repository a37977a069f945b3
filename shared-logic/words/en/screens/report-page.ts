/** Issued reports in the window. */
export const reportPageWords = {} as const
