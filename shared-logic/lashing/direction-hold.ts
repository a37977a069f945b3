import type { Verdict } from '../survey/verdict'
import { isOver } from '../rules/beyond'
import { weightN } from '../units/us-customary'
import { directFrictionShare } from './direct-strap'
import type { PullDirection } from './geometry'
import type { Method } from './methods'
import type { PlannedStrap } from './planned-strap'
import { heldEachByItself, heldEqually, pressedDownN, pullsAgainst, type StrapPull } from './strap-forces'

/** `waits`: a number is missing that could tip it. `rests on the bow stop`: straps and friction fall short, and what the stop bears is not known. */
export type Standing = 'holds' | 'short' | 'rests on the bow stop' | 'waits'
/** A benchmark binds nobody here: what falls short is an advisory, never a fail. */
export const verdictOfHold = { holds: 'pass', short: 'advisory', 'rests on the bow stop': 'advisory', waits: 'not seen' } as const satisfies Record<Standing, Verdict>

/** Mass the forces are reckoned with, kg: exact, or a bound of one that is not known. */
export interface ReckonedMass {
  readonly massKg: number
  readonly basis: 'exact' | 'at most' | 'at least'
}

/** What one strap adds in a direction, N; `tensionN` it then has. */
export interface StrapPart {
  readonly index: number
  readonly factor: number
  readonly tensionN: number
  readonly holdsN: number
}

/** One direction the boat would go: what is needed and what holds it, N. */
export interface DirectionHold {
  readonly direction: PullDirection
  readonly neededN: number
  readonly strapsN: number
  /** Friction of the boat's own weight on its supports. */
  readonly frictionN: number
  readonly bowStopN: number
  readonly heldN: number
  /** Held over needed. */
  readonly share: number
  readonly standing: Standing
  readonly straps: readonly StrapPart[]
  /** What of it the winch strap holds; absent where it holds nothing this way. */
  readonly byWinchN?: number
  /** Least the bow stop and its post must bear, where straps and friction leave something to it. */
  readonly stopMustBearN?: number
  /** Rating each of the straps that hold this way would need, all alike; absent where none does. */
  readonly ratingEachN?: number
}

export interface HoldInputs {
  readonly straps: readonly PlannedStrap[]
  readonly friction: number
  readonly mass: ReckonedMass
  readonly bowStopBlocks: boolean
  readonly bowStopRatedN?: number | undefined
}

interface Held {
  readonly strapsN: number
  readonly frictionN: number
  readonly parts: readonly StrapPart[]
}

const partsOf = (pulls: readonly StrapPull[], tensionOf: (pull: StrapPull) => number): StrapPart[] =>
  pulls.map((pull) => ({ index: pull.index, factor: pull.factor, tensionN: tensionOf(pull), holdsN: pull.factor * tensionOf(pull) }))

/** Direct straps and straps over the top together: dynamic friction throughout. */
const together = (pulls: readonly StrapPull[], weight: number, pressedN: number, friction: number, equalTension: boolean): Held => {
  const equally = heldEqually(pulls)
  const directN = equalTension ? equally.heldN : heldEachByItself(pulls)
  const tensionOf = ({ limitN = 0 }: StrapPull): number => (equalTension ? (limitN >= equally.tensionN ? equally.tensionN : 0) : limitN)
  const dynamic = friction * directFrictionShare
  return { strapsN: directN + dynamic * pressedN, frictionN: dynamic * weight, parts: partsOf(pulls, tensionOf) }
}

/** The better of two sums: everything together with dynamic friction; straps over the top alone with static friction. */
const heldBy = (direction: PullDirection, inputs: HoldInputs, method: Method): Held => {
  const { straps, friction, mass } = inputs
  const pulls = pullsAgainst(straps, direction, friction, method.against)
  if (direction === 'up') return { ...together(pulls, 0, 0, 0, method.equalTension), frictionN: 0 }
  const weight = weightN(mass.massKg)
  const pressedN = pressedDownN(straps) / method.safety[direction]
  const all = together(pulls, weight, pressedN, friction, method.equalTension)
  const over: Held = { strapsN: friction * pressedN, frictionN: friction * weight, parts: [] }
  return pressedN > 0 && over.strapsN + over.frictionN > all.strapsN + all.frictionN ? over : all
}

/** Whether a number not yet known could add to what is held this way. */
const couldHoldMore = (direction: PullDirection, { straps, friction }: HoldInputs, { against }: Method): boolean =>
  straps.some(({ lead, strap }) => !lead || (strap.route === 'over the top' && direction !== 'up' && strap.tensionN === undefined))
  || pullsAgainst(straps, direction, friction, against).some(({ limitN }) => limitN === undefined)

const standingOf = (direction: PullDirection, isShort: boolean, inputs: HoldInputs, method: Method): Standing => {
  const { mass, bowStopBlocks, bowStopRatedN } = inputs
  if (!isShort) return mass.basis === 'at least' ? 'waits' : 'holds'
  if (direction === 'forward' && bowStopBlocks && bowStopRatedN === undefined) return 'rests on the bow stop'
  return couldHoldMore(direction, inputs, method) || mass.basis === 'at most' ? 'waits' : 'short'
}

/** What is needed and held in one direction. Source: equilibrium of forces; the method's own for shares, friction and safety. */
export const holdIn = (direction: PullDirection, inputs: HoldInputs, method: Method): DirectionHold => {
  const neededN = method.shares[direction] * weightN(inputs.mass.massKg)
  const { strapsN, frictionN, parts } = heldBy(direction, inputs, method)
  const stopBlocks = direction === 'forward' && inputs.bowStopBlocks
  const bowStopN = stopBlocks ? (inputs.bowStopRatedN ?? 0) : 0
  const heldN = strapsN + frictionN + bowStopN
  const leftToStopN = neededN - strapsN - frictionN
  const pressingN = strapsN - parts.reduce((sum, part) => sum + part.holdsN, 0)
  const factors = parts.reduce((sum, { factor }) => sum + factor, 0)
  const byWinchN = parts.reduce((sum, { index, holdsN }) => (inputs.straps.find((strap) => strap.index === index)?.strap.place === 'winch' ? sum + holdsN : sum), 0)
  return {
    direction, neededN, strapsN, frictionN, bowStopN, heldN,
    share: heldN / neededN,
    standing: standingOf(direction, isOver(neededN, heldN), inputs, method),
    straps: parts,
    ...(byWinchN > 0 && { byWinchN }),
    ...(stopBlocks && leftToStopN > 0 && { stopMustBearN: leftToStopN }),
    ...(factors > 0 && { ratingEachN: Math.max(0, neededN - frictionN - bowStopN - pressingN) / factors }),
  }
}
