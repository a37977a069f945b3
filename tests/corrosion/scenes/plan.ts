import { type Chance } from './chance'

export const grounds = ['zinc bright', 'zinc weathered', 'painted grey', 'painted black', 'painted white', 'painted blue', 'painted red', 'painted green', 'aluminium'] as const
export type Ground = typeof grounds[number]

export const lights = ['daylight', 'warm low sun', 'blue shade', 'flash', 'overcast'] as const
export type Light = typeof lights[number]

export const members = ['close', 'rail', 'channel', 'plate'] as const
export type Member = typeof members[number]

export const backgrounds = ['gravel', 'asphalt', 'grass', 'water', 'concrete', 'hull'] as const
export type Background = typeof backgrounds[number]

export const decoyKinds = ['red paint', 'carpet', 'amber lens', 'red reflector', 'wood', 'leaf', 'mud', 'hand', 'run-off stain'] as const
export type DecoyKind = typeof decoyKinds[number]

export const rustPatterns = ['spot', 'general', 'pinpoint', 'edge', 'bolts'] as const
export type RustPattern = typeof rustPatterns[number]

/** What stands in a scene and how it is lit and taken; every number that is not a texture's own. */
export interface ScenePlan {
  readonly widthPx: number
  readonly heightPx: number
  readonly ground: Ground
  readonly light: Light
  readonly member: Member
  readonly background: Background
  readonly rust: RustPattern | 'none'
  readonly decoys: readonly DecoyKind[]
  readonly wet: boolean
  readonly shadow: boolean
  /** At the middle of the picture. */
  readonly mmPerPx: number
  readonly tiltRadians: number
  readonly towardsRadians: number
  readonly rollRadians: number
  readonly scaleBy: 'rule' | 'card'
  /** Gain of red and of blue over green. */
  readonly whiteBalance: readonly [number, number]
  readonly exposureStops: number
  /** Of a middle grey, as a share of it. */
  readonly noise: number
  readonly blurPx: number
  readonly jpegQuality: number
  readonly chromaSubsampling: '4:2:0' | '4:4:4'
}

export type SceneOptions = Partial<ScenePlan>

const usualDecoys: readonly (readonly [DecoyKind, number])[] = [
  ['red paint', 0.2], ['carpet', 0.2], ['amber lens', 0.12], ['red reflector', 0.12], ['wood', 0.14], ['leaf', 0.18], ['mud', 0.16], ['hand', 0.08], ['run-off stain', 0.35],
]

/** Draws the plan for a seed; what `options` names stands fixed. */
export function planOf(chance: Chance, options: SceneOptions): ScenePlan {
  const widthPx = options.widthPx ?? 800
  const member = options.member ?? chance.pick(members)
  const acrossMm = member === 'close' ? chance.between(140, 300) : chance.between(260, 700)
  const perspective = chance.happens(0.5)
  const ground = chance.pick(grounds)
  const drawn: ScenePlan = {
    widthPx,
    heightPx: options.heightPx ?? Math.round(widthPx * 0.75),
    ground,
    light: chance.pick(lights),
    member,
    background: chance.pick(backgrounds),
    rust: chance.pick(rustPatterns),
    decoys: usualDecoys.filter(([, probability]) => chance.happens(probability)).map(([kind]) => kind).slice(0, 3),
    wet: chance.happens(0.22),
    shadow: chance.happens(0.28),
    mmPerPx: acrossMm / widthPx,
    tiltRadians: perspective ? chance.between(0.17, 0.75) : 0,
    towardsRadians: chance.between(0, 2 * Math.PI),
    rollRadians: chance.between(-0.3, 0.3),
    scaleBy: perspective ? 'card' : chance.pick(['rule', 'card'] as const),
    whiteBalance: [chance.between(0.85, 1.15), chance.between(0.85, 1.15)],
    exposureStops: chance.between(-0.45, 0.4),
    noise: chance.logBetween(0.008, 0.05),
    blurPx: chance.between(0.3, 1),
    jpegQuality: Math.round(chance.between(60, 95)),
    chromaSubsampling: chance.pick(['4:2:0', '4:2:0', '4:4:4'] as const),
  }
  return { ...drawn, ...options }
}
