import { assertNever } from '../../../shared-logic/assert-never'
import { type Canvas, ramp } from './canvas'
import { type Chance } from './chance'
import { type Surface } from './grounds'
import { type Member } from './plan'

/** The member's face in its own plane, mm, middle at the origin, and what joins it above and below. */
export interface MemberShape {
  readonly halfLengthMm: number
  readonly halfHeightMm: number
  /** Seen strips beyond the face's long edges, and how light they are against it. */
  readonly above: { readonly heightMm: number, readonly shade: number }
  readonly below: { readonly heightMm: number, readonly shade: number }
  readonly edgeRadiusMm: number
}

export function shapeOf(member: Member, pictureMm: readonly [number, number], chance: Chance): MemberShape {
  const [acrossMm, downMm] = pictureMm
  const edgeRadiusMm = chance.between(1.5, 4)
  const nothing = { heightMm: 0, shade: 1 }
  switch (member) {
    case 'close': return { halfLengthMm: 9e3, halfHeightMm: 9e3, above: nothing, below: nothing, edgeRadiusMm }
    case 'rail': return {
      halfLengthMm: 9e3, halfHeightMm: downMm * chance.between(0.22, 0.34), edgeRadiusMm,
      above: { heightMm: downMm * chance.between(0.04, 0.12), shade: chance.between(1.15, 1.45) }, below: { heightMm: downMm * chance.between(0, 0.03), shade: 0.4 },
    }
    case 'channel': return {
      halfLengthMm: 9e3, halfHeightMm: downMm * chance.between(0.22, 0.32), edgeRadiusMm: edgeRadiusMm * 2,
      above: { heightMm: downMm * chance.between(0.03, 0.06), shade: chance.between(0.5, 0.8) }, below: { heightMm: downMm * chance.between(0.04, 0.08), shade: chance.between(1.2, 1.4) },
    }
    case 'plate': return {
      halfLengthMm: acrossMm * chance.between(0.36, 0.46), halfHeightMm: downMm * chance.between(0.34, 0.44), edgeRadiusMm: 1.5,
      above: nothing, below: { heightMm: downMm * 0.015, shade: 0.45 },
    }
    default: return assertNever(member)
  }
}

/** Signed distance inside the face, mm; negative outside. */
export function insideFaceMm(shape: MemberShape, x: number, y: number): number {
  return Math.min(shape.halfLengthMm - Math.abs(x), shape.halfHeightMm - Math.abs(y))
}

/** How light the member is at a point: its face 1, falling off round its edges, its other sides as they stand to the light. */
function shadeAt(shape: MemberShape, x: number, y: number): number {
  const round = shape.edgeRadiusMm
  const depth = insideFaceMm(shape, x, y)
  const other = y < 0 ? shape.above : shape.below
  if (depth >= round) return 1
  if (depth < 0) return other.heightMm > 0 ? other.shade : 1
  const edge = other.heightMm > 0 && Math.abs(x) < shape.halfLengthMm - round ? other.shade : 0.8
  return edge + (1 - edge) * ramp(0, round, depth)
}

/** Paints backdrop, member and its shadow on the backdrop. */
export function paintMember(canvas: Canvas, shape: MemberShape, surface: Surface, backdrop: Surface | undefined): void {
  const into = new Float64Array(4)
  const behind = new Float64Array(4)
  const soft = canvas.mmPerPx
  for (let at = 0; at < canvas.red.length; at += 1) {
    const x = canvas.xMm[at] ?? 0
    const y = canvas.yMm[at] ?? 0
    const outside = Math.max(Math.abs(x) - shape.halfLengthMm, -y - shape.halfHeightMm - shape.above.heightMm, y - shape.halfHeightMm - shape.below.heightMm)
    const cover = 1 - ramp(-soft / 2, soft / 2, outside)
    if (cover > 0) {
      surface(at, into)
      const shade = shadeAt(shape, x, y)
      for (let i = 0; i < 3; i += 1) into[i] = (into[i] ?? 0) * shade
    }
    if (cover < 1 && backdrop !== undefined) {
      backdrop(at, behind)
      const shadow = 0.4 + 0.6 * ramp(0, shape.halfHeightMm * 0.35, outside)
      for (let i = 0; i < 4; i += 1) into[i] = (into[i] ?? 0) * cover + (behind[i] ?? 0) * (i < 3 ? shadow : 1) * (1 - cover)
    }
    canvas.red[at] = into[0] ?? 0
    canvas.green[at] = into[1] ?? 0
    canvas.blue[at] = into[2] ?? 0
    canvas.gloss[at] = into[3] ?? 0
  }
}
