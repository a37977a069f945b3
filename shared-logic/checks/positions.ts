import { assertNever } from '../assert-never'
import type { Rig } from '../rig/rig'
import type { RuleBook } from '../rules/rule-book'
import { lampPositions, reflectorPositions } from '../rules/lamp-positions'

/** Where on the rig a check is asked. `once` has the single position 'rig'. */
export const positionFamilies = [
  'once', 'chain', 'frame member', 'corroding part', 'support', 'axle', 'hub', 'brake', 'wheel', 'wheel and spare', 'lamp', 'reflector', 'strap', 'tie-down strap', 'bow strap', 'transom strap',
] as const
export type PositionFamily = (typeof positionFamilies)[number]

/** A position's id is stable and speaks: 'axle 1 left', 'lamp rear stop left', 'strap bow tie', 'left rail'. */
export type Position = string

const sides = ['left', 'right'] as const

/** 'axle 1' first from the coupler; the single 'all axles' when the number of axles is not known. */
const axles = (count: number | undefined): Position[] =>
  count === undefined ? ['all axles'] : Array.from({ length: count }, (_, index) => `axle ${index + 1}`)

/** 'axle 1 left' and so on; 'all hubs'-like single position when the number of axles is not known. */
const ends = (count: number | undefined): Position[] =>
  count === undefined ? ['all axles'] : axles(count).flatMap((axle) => sides.map((side) => `${axle} ${side}`))

const supports = (rig: Rig): Position[] => {
  const kind = rig.trailer.supports
  if (kind === 'bunks') return ['bunk left', 'bunk right']
  if (kind === 'rollers') return ['keel rollers', 'side rollers left', 'side rollers right']
  return ['bunk left', 'bunk right', 'keel rollers']
}

/** What carries the hull's supports; bunk brackets while the supports are not known. */
const supportBrackets = ({ trailer: { supports: kind } }: Rig): Position[] => [...(kind === 'rollers' ? [] : ['bunk brackets']), ...(kind === 'rollers' || kind === 'bunks and rollers' ? ['roller brackets'] : [])]

const frameMembers: readonly Position[] = ['tongue', 'left rail', 'right rail', 'cross-members']

/** Braked axles are counted from the rear, as fitted when only some are braked: common practice, no source. */
const braked = (rig: Rig): Position[] => {
  const { axleCount, brakedAxleCount } = rig.trailer
  if (axleCount === undefined) return ends(undefined)
  const from = axleCount - Math.min(brakedAxleCount ?? axleCount, axleCount)
  return ends(axleCount).slice(from * 2)
}

/** The positions a family has on this rig under this rule book, in walking order. */
export const positionsOf = (family: PositionFamily, rig: Rig, ruleBook: RuleBook): readonly Position[] => {
  switch (family) {
    case 'once':
      return ['rig']
    case 'chain':
      return ['chain left', 'chain right']
    case 'frame member':
      return frameMembers
    case 'corroding part':
      return [...frameMembers, 'winch post', ...supportBrackets(rig), ...axles(rig.trailer.axleCount)]
    case 'support':
      return supports(rig)
    case 'axle':
      return axles(rig.trailer.axleCount)
    case 'hub':
    case 'wheel':
      return ends(rig.trailer.axleCount)
    case 'wheel and spare':
      return [...ends(rig.trailer.axleCount), ...(rig.trailer.spareWheel === true ? ['spare'] : [])]
    case 'brake':
      return braked(rig)
    case 'lamp':
      return lampPositions(rig.trailer, ruleBook)
    case 'reflector':
      return reflectorPositions(rig.trailer, ruleBook)
    case 'strap':
      return ['strap winch', 'strap bow tie', 'strap transom left', 'strap transom right']
    case 'tie-down strap':
      return ['strap bow tie', 'strap transom left', 'strap transom right']
    case 'bow strap':
      return ['strap bow tie']
    case 'transom strap':
      return ['strap transom left', 'strap transom right']
    default:
      return assertNever(family)
  }
}
