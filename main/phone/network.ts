import type { NetworkInterfaceInfo } from 'node:os'
import type { z } from 'zod'
import type { networkAddressSchema } from '../../shared-logic/phone/phone-state'

export type NetworkAddress = z.infer<typeof networkAddressSchema>

/** Private addresses, in the order a phone most likely shares them. Source: RFC 1918, section 3; RFC 4193, section 3.1 (unique local). */
const reaches: readonly RegExp[] = [/^192\.168\./, /^10\./, /^172\.(1[6-9]|2\d|3[01])\./, /^f[cd][0-9a-f]{2}:/i]

/** Every interface's name with its address; those of a private network first, then what else an IPv4 network has. Link-local and loopback reach no phone. */
export const networkAddresses = (interfaces: NodeJS.Dict<NetworkInterfaceInfo[]>): NetworkAddress[] => {
  const all = Object.entries(interfaces).flatMap(([name, infos]) =>
    (infos ?? [])
      .filter(({ internal, family, address }) => !internal && !address.startsWith('169.254.') && (family === 'IPv4' || reaches[3]?.test(address) === true))
      .map(({ address }) => ({ name, address })))
  const rank = ({ address }: NetworkAddress): number => {
    const at = reaches.findIndex((reach) => reach.test(address))
    return at === -1 ? reaches.length : at
  }
  return all.toSorted((a, b) => rank(a) - rank(b))
}

/** As it stands in an address: IPv6 in brackets. */
export const inAddress = (address: string): string => (address.includes(':') ? `[${address}]` : address)
