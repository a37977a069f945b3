/** Labels of the register's fields, keyed by their dotted path: the form, refusals and the report use the same ones. */
export const fields: Readonly<Record<string, string>> = {}
