import { checkOf } from '../checks/catalogue'

/**
 * What a photograph must show for its check: the rig or a good part of it, one part with its state, or something to be
 * read or as fine as a crack. Every figure here is common practice, no source.
 */
export type PhotographNeed = 'overview' | 'part' | 'fine'

export interface NeedFigures {
  /** Of the original, px. The finest fill the picture that is looked at and printed, 1600 px; a full HD camera gives that, what a messenger has made small does not. */
  readonly leastLongEdgePx: number
  /** Of the sharpest edges, px of the picture at most 1600 px long: in focus they are under 4, out of focus by 2 px over 3.5. */
  readonly widestEdgePx: number
  /** A sky may be burnt out where the rig is to be seen before it. */
  readonly mostBurntShare: number
}

export const needFigures: Readonly<Record<PhotographNeed, NeedFigures>> = {
  overview: { leastLongEdgePx: 1000, widestEdgePx: 6, mostBurntShare: 0.45 },
  part: { leastLongEdgePx: 1200, widestEdgePx: 5, mostBurntShare: 0.3 },
  fine: { leastLongEdgePx: 1600, widestEdgePx: 4.5, mostBurntShare: 0.25 },
}

/** Plates, stamps, labels, numbers, date codes, scales; cracks, welds, seams, worn threads. */
const fine = [
  'papers.identification-plate', 'papers.number-matches', 'papers.owner', 'papers.registration', 'papers.annual-inspection', 'papers.periodic-test', 'papers.identification-number',
  'papers.hull-number', 'papers.rating-plate', 'papers.tyre-placard', 'papers.axle-ratings',
  'coupler.class', 'coupler.body', 'coupler.ball-size', 'coupler.ball-wear', 'coupler.chain-strength', 'winch.strap', 'winch.cable', 'winch.capacity',
  'frame.cracks', 'frame.welds', 'frame.repairs', 'frame.near-mountings', 'axles.spindle', 'axles.mounting', 'axles.leaf-springs',
  'hubs.oil-level', 'hubs.sight-glass', 'wheels.tyre-size', 'wheels.marking', 'wheels.load', 'wheels.speed', 'wheels.tread', 'wheels.age', 'wheels.sidewall', 'wheels.pressure', 'wheels.rim',
  'brakes.actuator-travel', 'brakes.hoses', 'brakes.lining', 'brakes.disc-thickness', 'brakes.disc-surface', 'lights.wiring-joints', 'lights.voltage-drop',
  'tie-down.webbing', 'tie-down.stitching', 'tie-down.label',
]

const overview = [
  'coupler.level', 'winch.line-height', 'winch.second-tie', 'frame.straight', 'frame.fenders', 'frame.steps', 'bunks.bearing', 'bunks.keel', 'bunks.square', 'bunks.transom', 'bunks.guides',
  'axles.count', 'axles.square', 'axles.tracking', 'axles.ride-height', 'wheels.spare', 'brakes.chocks', 'lights.to-be-seen', 'lights.heights', 'lights.conspicuity',
  'tie-down.tension', 'tie-down.bow-lead', 'tie-down.transom-lead', 'tie-down.number', 'tie-down.directions', 'tie-down.engine', 'tie-down.propeller', 'tie-down.loose-gear', 'tie-down.cover',
  'tie-down.mast-and-aerials', 'after-use.rinse', 'after-use.storage',
]

/** Lamps are lit to be seen in the dark. */
const mayBeDark = ['lights.lamp', 'lights.reflector', 'lights.flash-rate', 'lights.to-be-seen', 'lights.identification-cluster', 'lights.conspicuity', 'lights.number-plate', 'lights.plug-test', 'after-use.lights']

/** A copied paper is white all over. */
const mayBeWhite = ['papers.number-matches', 'papers.owner', 'papers.registration', 'papers.annual-inspection', 'papers.periodic-test', 'papers.recall', 'hubs.service-record', 'after-use.service-record']

/** Every check named above, for a test to hold against the catalogue. */
export const checksWithNeeds: readonly string[] = [...fine, ...overview, ...mayBeDark, ...mayBeWhite]

const needs = new Map<string, PhotographNeed>([...fine.map((id) => [id, 'fine'] as const), ...overview.map((id) => [id, 'overview'] as const)])
const [dark, white] = [new Set(mayBeDark), new Set(mayBeWhite)]

export interface CheckNeed extends NeedFigures {
  readonly need: PhotographNeed
  readonly mayBeDark: boolean
  readonly mayBeWhite: boolean
}

/** What a photograph of this check must show; one of no check, or of a check not known any more, is an overview. */
export const needOf = (checkId: string | undefined): CheckNeed => {
  const need = checkId === undefined || checkOf(checkId) === undefined ? 'overview' : (needs.get(checkId) ?? 'part')
  return { need, ...needFigures[need], mayBeDark: dark.has(checkId ?? ''), mayBeWhite: white.has(checkId ?? '') }
}
