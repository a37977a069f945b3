/** Window frame, menu, doors, loading and failing. */
export const shellWords = {} as const
