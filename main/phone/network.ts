import type { NetworkInterfaceInfo } from 'node:os'
import type { z } from 'zod'
import type { networkAddressSchema } from '../../shared-logic/phone/phone-state'

export type NetworkAddress = z.infer<typeof networkAddressSchema>

/**
 * Networks whose addresses are not the Internet's, in the order a phone most likely shares them. Source: RFC 1918, section
 * 3; RFC 4193, section 3.1 (unique local); RFC 6598, section 7 (shared by the customers of a carrier, or a private overlay).
 */
const reaches: readonly RegExp[] = [/^192\.168\./, /^10\./, /^172\.(1[6-9]|2\d|3[01])\./, /^f[cd][0-9a-f]{2}:/i, /^100\.(6[4-9]|[7-9]\d|1[01]\d|12[0-7])\./]

/** Every interface's name with its address, the likeliest first. Loopback and link-local reach no phone; an address of the Internet would let the whole world try the door. */
export const networkAddresses = (interfaces: NodeJS.Dict<NetworkInterfaceInfo[]>): NetworkAddress[] =>
  Object.entries(interfaces)
    .flatMap(([name, infos]) => (infos ?? []).filter(({ internal }) => !internal).map(({ address }) => ({ name, address, rank: reaches.findIndex((reach) => reach.test(address)) })))
    .filter(({ rank }) => rank !== -1)
    .toSorted((a, b) => a.rank - b.rank)
    .map(({ name, address }) => ({ name, address }))

/** As it stands in an address: IPv6 in brackets. */
export const inAddress = (address: string): string => (address.includes(':') ? `[${address}]` : address)
