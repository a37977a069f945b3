/** The rig page and the rig form. */
export const rigWords = {} as const
