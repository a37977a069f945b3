import type { Spot, spotComponents } from '../survey/spot'
import { materialRows, type AreaScale } from './area-scales'
import { componentOf, componentRows } from './components'
import { areaOf, corrodedShare, togetherWith } from './corroded-share'
import { coupleAt, type Couple } from './galvanic'
import type { Ranged } from './ranged'
import { zincReadings, type ZincReadings } from './zinc-thickness'

/** What is known of the member besides the spot. */
export interface SpotSetting {
  /** Where the check asked, for the component a spot that names none lies on. */
  readonly position?: string
  /** Outside of the member's closed section, where it has one and it was measured. */
  readonly section?: { readonly widthM: number; readonly heightM: number }
  /** Mass of the member, for ASTM A123's limit on bare spots; by surface alone while it is not known. */
  readonly massKg?: number
}

/** All that the rules look at, worked out once. */
export interface SpotFacts {
  readonly spot: Spot
  readonly together: readonly Spot[]
  readonly component: (typeof spotComponents)[number]
  readonly bearsLoad: boolean
  readonly scales: readonly AreaScale[]
  readonly passShare: number | undefined
  readonly isDippedZinc: boolean
  /** Corroded share of the face, all spots graded as one together, 0 to 1. */
  readonly share: Ranged | undefined
  readonly area: Ranged | undefined
  /** Lost in the deepest pit, and generally over an area, each of the wall as made, 0 to 1. */
  readonly pitLoss: number | undefined
  readonly generalLoss: number | undefined
  readonly isPitted: boolean
  readonly couple: Couple | undefined
  readonly zinc: ZincReadings | undefined
}

const lossOf = (lostM: number | undefined, wallM: number | undefined): number | undefined => (lostM === undefined || wallM === undefined ? undefined : Math.max(0, lostM / wallM))

const isPitted = ({ kind, pitDepthM, pitCount }: Spot): boolean => kind === 'pitting' || (pitDepthM ?? 0) > 0 || pitCount !== undefined

export const spotFacts = (spot: Spot, spots: readonly Spot[], { position }: SpotSetting): SpotFacts => {
  const { scales, passShare, isDipped, readsZinc } = materialRows[spot.material]
  const { wallM, remainingM, pitDepthM } = spot
  const together = togetherWith(spot, spots)
  const component = componentOf(spot, position)
  return {
    spot, together, component, bearsLoad: componentRows[component].bearsLoad, scales, passShare, isDippedZinc: isDipped,
    share: corrodedShare(together), area: areaOf(spot),
    pitLoss: lossOf(pitDepthM, wallM), generalLoss: lossOf(wallM === undefined || remainingM === undefined ? undefined : wallM - remainingM, wallM), isPitted: isPitted(spot),
    couple: coupleAt(spot), zinc: readsZinc ? zincReadings(spot.coatingReadingsM, isDipped ? wallM : undefined) : undefined,
  }
}
