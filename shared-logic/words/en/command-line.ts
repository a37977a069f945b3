/** What the command line says. */
export const commandLine = {} as const
