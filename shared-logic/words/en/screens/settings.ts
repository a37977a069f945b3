/** Settings. */
export const settingsWords = {} as const
