/** Joins what there is of class names. */
export const classNames = (...names: readonly (string | false | undefined)[]): string => names.filter((name) => name !== undefined && name !== false).join(' ')
