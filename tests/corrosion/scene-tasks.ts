import { featuresOf, rustMask } from '../../shared-logic/rust/find-rust'
import { colourless } from '../../shared-logic/rust/colourless'
import { measuredArea } from '../../shared-logic/measuring/area'
import type { PixelPoint, Scale } from '../../shared-logic/measuring/measurement'
import { type FalseArea, falseOnDecoys, intersectionOverUnion, plainHueRule, shareOfFace } from './judge'
import { readCorners } from './read-corners'
import { type Chance, chanceOf } from './scenes/chance'
import type { SceneOptions, ScenePlan } from './scenes/plan'
import { renderScene, type Scene } from './scenes/render-scene'
import { through } from './scenes/view'

/** How the finder did on a scene, at the middle of its sensitivity. */
export interface Judged {
  readonly seed: number
  readonly plan: ScenePlan
  readonly agreement: number
  readonly plainAgreement: number
  readonly decoys: ReadonlyMap<string, FalseArea>
  readonly foundShare: number
  readonly colourless: boolean
}

export const judgedSensitivity = 0.5

async function judged(seed: number, options: SceneOptions): Promise<Judged> {
  const scene = await renderScene(seed, options)
  const found = rustMask(featuresOf(scene.pixels, scene.face), judgedSensitivity)
  return {
    seed, plan: scene.plan, agreement: intersectionOverUnion(found, scene), plainAgreement: intersectionOverUnion(plainHueRule(scene.pixels), scene),
    decoys: falseOnDecoys(found, scene), foundShare: shareOfFace(found, scene), colourless: colourless(scene.pixels),
  }
}

/** How far a measured area lies from the true one, as a share of it: of a spot outlined by hand, and of all rust as a mask. */
export interface Reading { readonly title: string, readonly error: number, readonly maskError: number, readonly quality: number }

/** The points a person sets to start with lie within this of the true corner; the edges are then read from the picture. */
const roughPx = 2.5
/** Each vertex of the outline and each end of the rule lies within this of where it should. */
const outlineJitterPx = 1
const ruleJitterPx = 0.5

const moved = ([x, y]: PixelPoint, by: number, chance: Chance): PixelPoint => [x + chance.between(-by, by), y + chance.between(-by, by)]

/** A ragged spot of 72 corners on the plane, mm, wholly in the picture. */
function ragged(scene: Scene, chance: Chance): PixelPoint[] {
  const { widthPx, heightPx, mmPerPx } = scene.plan
  const radiusMm = widthPx * mmPerPx * chance.between(0.06, 0.13)
  const [midX, midY] = through(scene.view.toPlane, widthPx * chance.between(0.3, 0.7), heightPx * chance.between(0.32, 0.68))
  const waves = [2, 3, 5, 8, 13].map((count) => ({ count, phase: chance.between(0, 6.28), strength: chance.between(0.1, 0.35) / count ** 0.8 }))
  return Array.from({ length: 72 }, (_, i) => {
    const angle = (i * Math.PI) / 36
    const radius = radiusMm * (1 + waves.reduce((sum, { count, phase, strength }) => sum + strength * Math.sin(count * angle + phase), 0))
    return [midX + radius * Math.cos(angle), midY + radius * Math.sin(angle)]
  })
}

function polygonAreaMm2(points: readonly PixelPoint[]): number {
  return Math.abs(points.reduce((sum, [x, y], i) => {
    const [nextX, nextY] = points[(i + 1) % points.length] ?? [x, y]
    return sum + x * nextY - nextX * y
  }, 0)) / 2
}

function scaleAsRead(scene: Scene, chance: Chance): Scale {
  const { scale } = scene
  if (scale.kind === 'length') return { ...scale, from: moved(scale.from, ruleJitterPx, chance), to: moved(scale.to, ruleJitterPx, chance) }
  const [a, b, c, d] = scale.corners
  return { ...scale, corners: readCorners(scene.pixels, [moved(a, roughPx, chance), moved(b, roughPx, chance), moved(c, roughPx, chance), moved(d, roughPx, chance)], 4) }
}

async function measured(seed: number, options: SceneOptions): Promise<Reading> {
  const scene = await renderScene(seed, options)
  const chance = chanceOf(seed + 500_000)
  const scale = scaleAsRead(scene, chance)
  const spot = ragged(scene, chance)
  const size = { widthPx: scene.plan.widthPx, heightPx: scene.plan.heightPx }
  const points = spot.map(([x, y]) => moved(through(scene.view.toPixel, x, y), outlineJitterPx, chance))
  const areaMm2 = measuredArea({ ...size, scale, outline: { by: 'polygon', points } }).areaM2 * 1e6
  const found = { asSet: scene.truth, tight: scene.truth, loose: scene.truth }
  const rusted = measuredArea({ ...size, scale, outline: { by: 'finder', finder: 'rust 1', sensitivity: judgedSensitivity, strokes: [] } }, found).areaM2
  return {
    title: `seed ${seed}: ${scene.plan.ground}, ${scene.plan.light}, JPEG ${scene.plan.jpegQuality}, tilt ${scene.view.tiltDegrees.toFixed(0)} degrees, scale by ${scale.kind}`,
    error: areaMm2 / polygonAreaMm2(spot) - 1, maskError: rusted / scene.rustAreaM2 - 1, quality: scene.plan.jpegQuality,
  }
}

/** What a worker can be asked to do with a scene. */
export const sceneTasks = { judged, measured } as const
