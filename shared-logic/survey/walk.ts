import type { Answer } from './answer'
import { summarize, type Assessed, type Summary } from './assess'
import { stations, type StationId } from './station'

/** A station as a stop on the walk: its checks in order, and where to step in. */
export interface Stop {
  readonly station: StationId
  /** Counted from 1, in walking order, over the stations this rig has. */
  readonly number: number
  readonly checks: readonly Assessed[]
  readonly summary: Summary
  /** The first open check of the station, else its first check. */
  readonly entry: Assessed
}

const at = (walk: readonly Assessed[], key: string): number => walk.findIndex((each) => each.key === key)

/** The check after this one in walking order; undefined after the last. An unknown key starts at the beginning. */
export const nextCheck = (walk: readonly Assessed[], key: string): Assessed | undefined => walk[at(walk, key) + 1]

/** The check before this one in walking order; undefined before the first. */
export const previousCheck = (walk: readonly Assessed[], key: string): Assessed | undefined => walk[at(walk, key) - 1]

/** The first check nobody has answered yet. */
export const firstOpen = (walk: readonly Assessed[]): Assessed | undefined => walk.find((each) => each.open)

/** The next open check after this one; past the end it looks again from the start. Undefined when nothing else is open. */
export const nextOpen = (walk: readonly Assessed[], key: string): Assessed | undefined => {
  const here = at(walk, key)
  return walk.slice(here + 1).find((each) => each.open) ?? walk.slice(0, Math.max(here, 0)).find((each) => each.open)
}

/** Where a walk is taken up again: the check last stood at, else the first open one of its station (the rig's record may have done away with it), else of all, else the first. */
export const whereToResume = (walk: readonly Assessed[], hereKey: string | undefined): Assessed | undefined =>
  walk.find((each) => each.key === hereKey) ?? firstOpen(walk.filter(({ check }) => hereKey?.startsWith(`${check.station}.`))) ?? firstOpen(walk) ?? walk[0]

/** The stations this rig has checks at, in walking order. */
export const stopsOf = (walk: readonly Assessed[]): Stop[] =>
  stations
    .map((station) => walk.filter((each) => each.check.station === station))
    .flatMap((checks, index) => {
      const [first] = checks
      const station = stations[index]
      return first === undefined || station === undefined ? [] : [{ station, checks, summary: summarize(checks), entry: firstOpen(checks) ?? first }]
    })
    .map((stop, index) => ({ ...stop, number: index + 1 }))

/** The first check to open when a position on the drawing is tapped: an open one there before an answered one, the own station's before another's. */
export const checkAtPosition = (walk: readonly Assessed[], position: string, station: StationId | undefined): Assessed | undefined => {
  const there = walk.filter((each) => each.position === position)
  const own = there.filter((each) => each.check.station === station)
  return firstOpen(own) ?? firstOpen(there) ?? own[0] ?? there[0]
}

/** What may be given to its fellows: an answer by choices alone, at one position, and the same check still open at others. */
export interface SameOffer {
  readonly from: Assessed
  readonly answer: Answer
  readonly to: readonly Assessed[]
}

/**
 * The offer 'same for the others' at this check: from itself when it is answered, else from the fellow answered last
 * before it in walking order. Only for checks of choices: a reading is taken at each place or it is no reading.
 * Only a pass is handed on: a fault is looked at where it is. Overrule, note and set-aside were said of one place.
 */
export const sameForOthers = (walk: readonly Assessed[], current: Assessed): SameOffer | undefined => {
  if (!current.check.fields.every((field) => field.kind === 'choice')) return undefined
  const fellows = walk.filter((each) => each.check.id === current.check.id)
  const here = fellows.findIndex((each) => each.key === current.key)
  const from = fellows.slice(0, here + 1).findLast((each) => !each.open && each.answer !== undefined && each.answer.aside === undefined && each.found !== undefined)
  if (from?.judged !== 'pass') return undefined
  const to = fellows.filter((each) => each.open)
  if (from.answer === undefined || to.length === 0) return undefined
  return { from, answer: { values: from.answer.values }, to }
}
