/** Text as it is looked for: 'Élan' is found by 'elan'. */
export const folded = (text: string): string => text.normalize('NFD').replaceAll(/\p{M}/gu, '').toLowerCase()

/** The words looked for, folded. */
export const wordsIn = (find: string): string[] => folded(find).split(/\s+/).filter((word) => word !== '')
