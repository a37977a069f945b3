import { version } from '../package.json'

/** The program's own version, as every report and every yard keeps it. */
export const programVersion: string = version
