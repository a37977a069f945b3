/** The yard: list of rigs, first start, search. */
export const yardWords = {} as const
