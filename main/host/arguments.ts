import { isIP } from 'node:net'
import { parseArgs } from 'node:util'

export interface HostArguments {
  readonly folder: string | undefined
  readonly port: number
  readonly open: boolean
  /** Where a door for a phone is to stand; the likeliest local network when it is not said. */
  readonly phoneOn: string | undefined
}

const portOf = (written: string): number | undefined => {
  const port = Number(written)
  return /^\d{1,5}$/.test(written) && port <= 65_535 ? port : undefined
}

/** One address. That of all networks at once ('0.0.0.0', '::') is none a phone could be sent to, and would open the door to every one of them. */
const isOneAddress = (written: string): boolean => isIP(written) !== 0 && !/^[0:.]+$/.test(written)

/** Reads the host's arguments; undefined when they are not understood. */
export const readArguments = (args: readonly string[]): HostArguments | undefined => {
  try {
    const { values } = parseArgs({ args: [...args], options: { folder: { type: 'string' }, port: { type: 'string', default: '0' }, 'phone-on': { type: 'string' }, 'no-open': { type: 'boolean', default: false } } })
    const port = portOf(values.port)
    const phoneOn = values['phone-on']
    return port === undefined || (phoneOn !== undefined && !isOneAddress(phoneOn)) ? undefined : { folder: values.folder, port, open: !values['no-open'], phoneOn }
  } catch {
    return undefined
  }
}
