import type { PixelPoint, Scale } from '../../../shared-logic/measuring/measurement'
import type { Mask, Pixels } from '../../../shared-logic/measuring/pixels'
import { backdropOf, backdropPoints } from './backgrounds'
import { photographed } from './camera'
import { blankCanvas, type Canvas } from './canvas'
import { chanceOf } from './chance'
import { boltPlaces, paintBolt, paintDecoy } from './decoys'
import { surfaceOf } from './grounds'
import { lightCanvas } from './light'
import { insideFaceMm, type MemberShape, paintMember, shapeOf } from './member'
import { planOf, type SceneOptions, type ScenePlan } from './plan'
import { rustOver } from './rust'
import { layScaleMark } from './scale-mark'
import { areaFactor, clipped, through, type View, viewOf } from './view'

/** A rendered photograph and everything that is known of it, because it was made. */
export interface Scene {
  readonly plan: ScenePlan
  readonly pixels: Pixels
  /** Pixels of the face that are rust by half or more. */
  readonly truth: Mask
  /** Pixels inside the face that look like rust and are none. */
  readonly decoys: Mask
  /** Which decoy, by its place in `decoyKinds` and one more; 0 none. */
  readonly decoyLabels: Uint8Array
  /** The member's face as it shows in the picture, px. */
  readonly face: PixelPoint[]
  readonly faceMask: Mask
  /** Where the card's corners or the rule's end marks truly fall. */
  readonly scale: Scale
  readonly view: View
  /** Rusted area on the face's plane, m2: each rusted pixel by the piece of the plane it shows. */
  readonly rustAreaM2: number
}

function viewFor(plan: ScenePlan): View {
  return viewOf({
    widthPx: plan.widthPx, heightPx: plan.heightPx, mmPerPx: plan.mmPerPx, roll: plan.rollRadians, tilt: plan.tiltRadians, towards: plan.towardsRadians,
    middle: [plan.widthPx / 2, plan.heightPx / 2],
  })
}

/** A surveyor outlines a face a little inside its edges. */
const outlineInsetMm = 1

function facePolygon(plan: ScenePlan, shape: MemberShape, view: View): PixelPoint[] {
  const far = 1.2 * plan.widthPx * plan.mmPerPx
  const halfX = Math.min(far, shape.halfLengthMm - outlineInsetMm)
  const halfY = Math.min(far, shape.halfHeightMm - outlineInsetMm)
  const corners = ([[-halfX, -halfY], [halfX, -halfY], [halfX, halfY], [-halfX, halfY]] as const).map(([x, y]) => through(view.toPixel, x, y))
  return clipped(corners, plan.widthPx, plan.heightPx, 1)
}

function masksOf(canvas: Canvas, shape: MemberShape): { truth: Mask, decoys: Mask, faceMask: Mask } {
  const [width, height] = [canvas.widthPx, canvas.heightPx]
  const blank = (): Mask => ({ width, height, data: new Uint8Array(width * height) })
  const masks = { truth: blank(), decoys: blank(), faceMask: blank() }
  for (let row = 1; row < height - 1; row += 1) maskRow(canvas, shape, masks, row)
  return masks
}

function maskRow(canvas: Canvas, shape: MemberShape, masks: { truth: Mask, decoys: Mask, faceMask: Mask }, row: number): void {
  const first = row * canvas.widthPx
  for (let at = first + 1; at < first + canvas.widthPx - 1; at += 1) {
    if (insideFaceMm(shape, canvas.xMm[at] ?? 0, canvas.yMm[at] ?? 0) < outlineInsetMm) continue
    const rust = canvas.rust[at] ?? 0
    masks.faceMask.data[at] = 1
    if (rust >= 0.5) masks.truth.data[at] = 1
    else if ((canvas.decoy[at] ?? 0) > 0 && rust < 0.05) masks.decoys.data[at] = 1
  }
}

function areaM2Of(mask: Mask, view: View): number {
  let areaMm2 = 0
  mask.data.forEach((rusted, at) => {
    if (rusted === 1) areaMm2 += areaFactor(view.toPlane, (at % mask.width) + 0.5, Math.floor(at / mask.width) + 0.5)
  })
  return areaMm2 / 1e6
}

/** Renders the scene of a seed; the same seed and options give the same bytes. */
export async function renderScene(seed: number, options: SceneOptions = {}): Promise<Scene> {
  const chance = chanceOf(seed)
  const plan = planOf(chance, options)
  const view = viewFor(plan)
  const canvas = blankCanvas(plan.widthPx, plan.heightPx, view, plan.mmPerPx)
  const shape = shapeOf(plan.member, [plan.widthPx * plan.mmPerPx, plan.heightPx * plan.mmPerPx], chance)
  const behind = plan.member === 'close' ? undefined : backdropOf(plan.background, backdropPoints(plan.widthPx, plan.heightPx), chance)
  paintMember(canvas, shape, surfaceOf(plan.ground, canvas, chance), behind)
  if (plan.decoys.includes('red paint')) paintDecoy(canvas, view, shape, 'red paint', chance)
  const bolts = plan.rust === 'bolts' || plan.member === 'plate' ? boltPlaces(canvas, view, shape, chance) : []
  if (plan.rust !== 'none') rustOver(canvas, view, shape, { pattern: plan.rust, stains: plan.decoys.includes('run-off stain'), bolts }, chance)
  for (const place of bolts) paintBolt(canvas, view, place, Math.max(6, 14 * plan.mmPerPx))
  for (const kind of plan.decoys) if (kind !== 'run-off stain' && kind !== 'red paint') paintDecoy(canvas, view, shape, kind, chance)
  const scale = layScaleMark(canvas, view, plan.scaleBy, chance)
  const masks = masksOf(canvas, shape)
  lightCanvas(canvas, plan, chance)
  const pixels = await photographed(canvas, plan, chance)
  return { plan, pixels, ...masks, decoyLabels: canvas.decoy, face: facePolygon(plan, shape, view), scale, view, rustAreaM2: areaM2Of(masks.truth, view) }
}
