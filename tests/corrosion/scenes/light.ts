import { type Canvas, ramp } from './canvas'
import { type Chance } from './chance'
import { type Colour } from './colours'
import { noiseOf, noisePlane } from './noise'
import { type Light, type ScenePlan } from './plan'
import { softNoise } from './tiles'

/** What is left of the light's own colour after the camera has corrected most of it. */
const lightColours: Record<Light, Colour> = {
  daylight: [1, 1, 1], 'warm low sun': [1.16, 1, 0.76], 'blue shade': [0.88, 0.98, 1.18], flash: [1, 1, 1.03], overcast: [0.98, 1, 1.04],
}

/** Brightness over the picture, 1 at its best. */
function fallOff(canvas: Canvas, plan: ScenePlan, chance: Chance): Float32Array {
  const { widthPx, heightPx } = canvas
  const flash = plan.light === 'flash'
  const most = plan.light === 'warm low sun' ? 0.35 : plan.light === 'overcast' ? 0.08 : 0.2
  const midX = widthPx * (flash ? chance.between(0.35, 0.65) : 0.5)
  const midY = heightPx * (flash ? chance.between(0.35, 0.65) : 0.5)
  const reach = widthPx * chance.between(0.5, 0.8)
  const slopeX = chance.between(-most, most) / widthPx
  const slopeY = chance.between(-most, most) / heightPx
  const plane = new Float32Array(canvas.red.length)
  for (let at = 0; at < plane.length; at += 1) {
    const dx = (at % widthPx) - midX
    const dy = Math.floor(at / widthPx) - midY
    plane[at] = flash ? 1 / (1 + (dx * dx + dy * dy) / (reach * reach)) : 1 + slopeX * dx + slopeY * dy
  }
  return plane
}

/** A shadow cast across: a bar or a half plane, its edge soft; 1 in full shadow. */
function shadowOver(canvas: Canvas, plan: ScenePlan, chance: Chance): Float32Array {
  const plane = new Float32Array(canvas.red.length)
  if (!plan.shadow) return plane
  const angle = chance.between(0, Math.PI)
  const cos = Math.cos(angle)
  const sin = Math.sin(angle)
  const bar = chance.happens(0.5)
  const half = canvas.widthPx * (bar ? chance.between(0.05, 0.15) : 2)
  const middle = (canvas.widthPx / 2) * cos + (canvas.heightPx / 2) * sin + chance.between(-0.2, 0.2) * canvas.widthPx + (bar ? 0 : half)
  const soft = canvas.widthPx * chance.logBetween(0.003, 0.03)
  for (let at = 0; at < plane.length; at += 1) {
    plane[at] = ramp(-soft, soft, half - Math.abs((at % canvas.widthPx) * cos + Math.floor(at / canvas.widthPx) * sin - middle))
  }
  return plane
}

const bell = (count: number, middle: number, reach: number): Float64Array => Float64Array.from({ length: count }, (_, i) => Math.exp(-(((i - middle) / reach) ** 2)))

/** The mirror image of sun, sky or flash on smooth ground. */
function shineOver(canvas: Canvas, plan: ScenePlan, chance: Chance): Float32Array {
  const flash = plan.light === 'flash'
  const across = bell(canvas.widthPx, canvas.widthPx * chance.between(0.2, 0.8), canvas.widthPx * (flash ? 0.12 : 0.5))
  const down = bell(canvas.heightPx, canvas.heightPx * chance.between(0.2, 0.8), canvas.widthPx * 0.12)
  const strength = flash ? chance.between(0.8, 2) : plan.light === 'overcast' ? 0.1 : chance.between(0.1, 0.5)
  const plane = new Float32Array(canvas.red.length)
  for (let at = 0; at < plane.length; at += 1) plane[at] = strength * (across[at % canvas.widthPx] ?? 0) * (down[Math.floor(at / canvas.widthPx)] ?? 0)
  return plane
}

/** Water lies in the pores, so the ground is darker, its weaker colours the more so; where it stands it mirrors the sky in streaks. */
function wetCanvas(canvas: Canvas, mirrored: Float32Array, chance: Chance): void {
  const ripples = noiseOf(chance, 30 * canvas.mmPerPx)
  const ripple = noisePlane(canvas, { ...ripples, acrossX: ripples.acrossX * 0.3, acrossY: 0, downX: 0 })
  const film = noisePlane(canvas, noiseOf(chance, 150 * canvas.mmPerPx, softNoise))
  for (let at = 0; at < mirrored.length; at += 1) {
    const water = ramp(-1.6, -0.2, film[at] ?? 0)
    soak(canvas.red, at, water)
    soak(canvas.green, at, water)
    soak(canvas.blue, at, water)
    // Rust soaks it up: no film stands on it to mirror the sky.
    const standing = water * (1 - 0.85 * (canvas.rust[at] ?? 0))
    mirrored[at] = (mirrored[at] ?? 0) + standing * (0.02 + 0.5 * ramp(1.5, 2.6, ripple[at] ?? 0))
  }
}

function soak(plane: Float32Array, at: number, water: number): void {
  const light = Math.min(1, Math.max(0, plane[at] ?? 0))
  plane[at] = light * (1 - 0.42 * water * (1 - light))
}

/** Lights the painted surfaces: what stood for reflectance stands for radiance after it. */
export function lightCanvas(canvas: Canvas, plan: ScenePlan, chance: Chance): void {
  const tint = lightColours[plan.light]
  const fall = fallOff(canvas, plan, chance)
  const shadow = shadowOver(canvas, plan, chance)
  const depth = chance.between(0.28, 0.5)
  const mirrored = shineOver(canvas, plan, chance)
  for (let at = 0; at < mirrored.length; at += 1) mirrored[at] = (mirrored[at] ?? 0) * (canvas.gloss[at] ?? 0)
  if (plan.wet) wetCanvas(canvas, mirrored, chance)
  for (let at = 0; at < mirrored.length; at += 1) {
    const dark = shadow[at] ?? 0
    const direct = (fall[at] ?? 0) * (1 - dark * (1 - depth))
    const shine = (mirrored[at] ?? 0) * (1 - dark)
    canvas.red[at] = ((canvas.red[at] ?? 0) + shine) * direct * tint[0] * (1 - 0.06 * dark)
    canvas.green[at] = ((canvas.green[at] ?? 0) + shine) * direct * tint[1]
    canvas.blue[at] = ((canvas.blue[at] ?? 0) + shine) * direct * tint[2] * (1 + 0.1 * dark)
  }
}
