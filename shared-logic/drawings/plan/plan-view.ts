import type { Rig } from '../../rig/rig'
import type { RuleBook } from '../../rules/rule-book'
import type { Drawing } from '../drawing'
import { boatPart } from './boat'
import { framePart } from './frame'
import { lampsPart } from './lamps'
import { planLayout } from './layout'
import { runningGearPart } from './running-gear'
import { strapsPart } from './straps'
import { footOf, stopRadius, walkMargin, walkPathPart } from './walk-path'

/**
 * The rig from above, coupler up, drawn from its own data; left on the page is left on the road.
 *
 * Places: every position the checks ask about, 'rig' in the middle, and 'station …' for each stop of the walk
 * (absent with `walk: false`, as on the report's first page).
 */
export const planView = (rig: Rig, ruleBook: RuleBook, { walk = true }: { readonly walk?: boolean } = {}): Drawing => {
  const at = planLayout(rig)
  const parts = [
    ...(walk ? [walkPathPart(at)] : []),
    framePart(rig, at),
    runningGearPart(rig, at),
    boatPart(rig, at),
    strapsPart(rig, at),
    lampsPart(rig, ruleBook, at),
  ]
  const margin = walk ? walkMargin + stopRadius + 6 : 34
  const halfWidth = Math.max(at.halfWidth, at.halfBeam) + margin
  const top = walk ? -0.09 * at.bottom - stopRadius - 6 : -40
  const foot = walk ? footOf(at) + stopRadius + 6 : at.bottom + 60
  return {
    viewBox: [Math.round(-halfWidth), Math.round(top), Math.round(halfWidth * 2), Math.round(foot - top)],
    shapes: parts.flatMap((part) => part.shapes),
    places: [...parts.flatMap((part) => part.places), { id: 'rig', x: 0, y: at.bottom * 0.45 }],
    toScale: at.toScale,
  }
}
