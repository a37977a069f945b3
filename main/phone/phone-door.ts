import { networkInterfaces } from 'node:os'
import type { Desk } from '../../shared-logic/contract/contract'
import { refuse } from '../../shared-logic/contract/refusal'
import type { PhoneDoor } from '../desk/phone'
import { Arrivals } from './arrivals'
import type { Closing } from './lines'
import { networkAddresses, type NetworkAddress } from './network'
import { openOneDoor, type OneDoor } from './one-door'
import { openPageFiles } from './page-files'
import type { Taken } from './room'

export interface PhoneDoorOptions {
  /** The built window, in which the phone's page lies. */
  readonly rendererFolder: string
  readonly now: () => number
  readonly onFault: (fault: unknown) => void
  /** The address to stand at, where the person who started the program chose it. */
  readonly standsAt?: string | undefined
  /** The machine's networks as they are now. */
  readonly networks?: typeof networkInterfaces
}

/** Surveys whose pictures are known by their names on the phone when a door is opened anew; more than one person walks in a day. */
const mostSurveys = 8

const faultCode = (fault: unknown): string => (fault instanceof Error && 'code' in fault ? String(fault.code) : '')

/** The address wanted in the window, the one chosen at the start, or the likeliest. */
const chooseAddress = (wanted: string | undefined, standsAt: string | undefined, known: readonly NetworkAddress[]): string => {
  if (wanted !== undefined && wanted !== standsAt) return known.find(({ address }) => address === wanted)?.address ?? refuse('phone.no-such-address', { address: wanted }, 'address')
  return standsAt ?? known[0]?.address ?? refuse('phone.no-network')
}

/** Opens doors for phones on the local network, one at a time: a second one closes the first. */
export const makePhoneDoor = ({ rendererFolder, now, onFault, standsAt, networks = networkInterfaces }: PhoneDoorOptions) => (desk: () => Desk): PhoneDoor => {
  const pages = openPageFiles(rendererFolder)
  let open: OneDoor | undefined
  let lastPort: number | undefined
  /** One after the other, so that two clicks never leave two doors. */
  let before: Promise<unknown> = Promise.resolve()
  const inTurn = <Result>(work: () => Promise<Result>): Promise<Result> => {
    const mine = before.then(work, work)
    before = mine.catch(() => undefined)
    return mine
  }
  /** A reply that was lost with one door is given through the next: a picture that the surveyor moved or took away meanwhile does not come back. */
  const arrived = new Map<string, Arrivals<Taken>>()
  const arrivalsOf = (surveyId: string): Arrivals<Taken> => {
    const arrivals = new Arrivals(arrived.get(surveyId))
    arrived.delete(surveyId)
    arrived.set(surveyId, arrivals)
    for (const oldest of [...arrived.keys()].slice(0, -mostSurveys)) arrived.delete(oldest)
    return arrivals
  }
  /** Doors that are closed and still tell so. */
  const ending = new Set<Closing>()
  const shut = (door: OneDoor | undefined): void => {
    if (door === undefined || open !== door) return
    open = undefined
    const closing = door.close()
    ending.add(closing)
    void closing.ended.then(() => ending.delete(closing))
  }
  /** Their place is wanted: by the next door, or by the program's end. */
  const cutEnding = async (): Promise<void> => {
    for (const { cut } of ending) cut()
    await Promise.all([...ending].map(({ ended }) => ended))
  }
  return {
    open: (wanted) =>
      inTurn(async () => {
        const address = chooseAddress(wanted.address, standsAt, networkAddresses(networks()))
        const others = (): NetworkAddress[] => networkAddresses(networks()).filter((each) => each.address !== address)
        shut(open)
        await cutEnding()
        try {
          const door = await openOneDoor(wanted, address, others, { desk: desk(), now, onFault, pages, lastPort, arrivals: arrivalsOf(wanted.surveyId) }, () => shut(door))
          open = door
          const state = door.state()
          lastPort = Number(new URL(state.address).port)
          return state
        } catch (fault) {
          if (['EADDRNOTAVAIL', 'EACCES', 'EADDRINUSE', 'EINVAL', 'ENOTFOUND'].includes(faultCode(fault))) return refuse('phone.cannot-listen', { address })
          throw fault
        }
      }),
    state: (surveyId) => {
      if (open?.isOver() === true) shut(open)
      return open?.surveyId === surveyId ? open.state() : undefined
    },
    close: (surveyId) =>
      inTurn(async () => {
        if (open?.surveyId === surveyId) shut(open)
      }),
    closeAll: () =>
      inTurn(async () => {
        shut(open)
        await cutEnding()
      }),
  }
}
