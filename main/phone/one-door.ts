import { createServer } from 'node:http'
import { createServer as createSecureServer } from 'node:https'
import type { ParsedInputOf } from '../../shared-logic/contract/contract'
import type { PhoneState } from '../../shared-logic/phone/phone-state'
import { BodyReader } from '../serving/body'
import { Allowance } from './allowance'
import { answerPhone } from './answer'
import { makeCertificate } from './certificate'
import { boundLines, closing, inTurnOnALine, listening, type Closing } from './lines'
import { inAddress, type NetworkAddress } from './network'
import type { PageFiles } from './page-files'
import { PairingDesk } from './pairing'
import type { Room, Taken } from './room'

/** A door that stands open for one survey. */
export interface OneDoor {
  readonly surveyId: string
  readonly state: () => PhoneState
  /** By the clock: a machine that slept wakes after its time, and no timer ran meanwhile. */
  readonly isOver: () => boolean
  /** Nothing is done any more from here on; whoever asks is told so, for a little while. It has ended when what had come whole is kept, too. */
  readonly close: () => Closing
}

export interface Surroundings extends Pick<Room, 'desk' | 'now' | 'onFault'> {
  readonly pages: PageFiles
  readonly arrivals: Room['arrivals']
  /** Where the door before this one stood. */
  readonly lastPort: number | undefined
}

const iso = (ms: number): string => new Date(ms).toISOString()

/** A picture sent twice is one photograph. One that the surveyor took away and the phone sent anew stands where it came last. */
const cameNew = (outcomes: readonly Taken[]): PhoneState['arrived'] => {
  const lastAt = new Map<string, number>()
  for (const { photographId, alreadyThere, atMs } of outcomes) {
    if (alreadyThere) continue
    lastAt.delete(photographId)
    lastAt.set(photographId, atMs)
  }
  return Array.from(lastAt, ([photographId, atMs]) => ({ photographId, at: iso(atMs) }))
}

const stateOf = (room: Room, isSecure: boolean, fingerprint: string | undefined, others: NetworkAddress[]): PhoneState => {
  const { secret, phone } = room.pairing
  return {
    surveyId: room.surveyId, address: `${room.origin}/`, isSecure, otherAddresses: others, closesAt: iso(room.closesAtMs),
    ...(secret !== undefined && { pairingAddress: `${room.origin}/#${secret}` }),
    ...(fingerprint !== undefined && { certificateFingerprint: fingerprint }),
    ...(phone && { phone: { name: phone.name, pairedAt: iso(phone.pairedAtMs), lastHeardAt: iso(phone.lastHeardAtMs) } }),
    arrived: cameNew(room.arrivals.outcomes),
  }
}

/** Opens a door at `address`; `onTimeUp` is told when its time is over. Rejects where the address or a port cannot be had. */
export const openOneDoor = async (
  { surveyId, minutes, isSecure }: ParsedInputOf<'phone.open'>,
  address: string,
  others: () => NetworkAddress[],
  { pages, lastPort, ...around }: Surroundings,
  onTimeUp: () => void,
): Promise<OneDoor> => {
  const lastsMs = minutes * 60_000
  const certificate = isSecure ? await makeCertificate(address, around.now()) : undefined
  const limits = { maxHeaderSize: 16_384, connectionsCheckingInterval: 2_000 }
  const server = certificate ? createSecureServer({ key: certificate.key, cert: certificate.cert, handshakeTimeout: 10_000, ...limits }) : createServer(limits)
  const lines = boundLines(server, (from) => room.pairing.speaksFrom(from), around.now)
  const port = await listening(server, address, lastPort)
  const closesAtMs = around.now() + lastsMs
  let wasClosed = false
  const room: Room = {
    ...around, surveyId, pages, isClosed: () => wasClosed || around.now() >= closesAtMs, origin: new URL(`${isSecure ? 'https' : 'http'}://${inAddress(address)}:${port}`).origin, closesAtMs,
    questions: new Allowance(200, 20), strangersQuestions: new Allowance(100, 10, 5),
    pairing: new PairingDesk(port, isSecure, minutes * 60), lines, bodies: new BodyReader(),
  }
  server.on('request', inTurnOnALine((request, response) => void answerPhone(room, request, response)))
  // A broken line is the network's doing; after the door stands, none of them is ours to report.
  server.on('error', around.onFault)
  const timer = setTimeout(onTimeUp, lastsMs)
  timer.unref()
  return {
    surveyId,
    state: () => stateOf(room, isSecure, certificate?.fingerprint, others()),
    isOver: room.isClosed,
    close: () => {
      wasClosed = true
      clearTimeout(timer)
      const { ended, cut } = closing(server, lines.cut)
      return { ended: ended.then(() => room.arrivals.settled()), cut }
    },
  }
}
