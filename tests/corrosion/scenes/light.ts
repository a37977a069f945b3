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
function fallOff(canvas: Canvas, plan: ScenePlan, chance: Chance): (column: number, row: number) => number {
  const { widthPx, heightPx } = canvas
  if (plan.light === 'flash') {
    const [midX, midY] = [widthPx * chance.between(0.35, 0.65), heightPx * chance.between(0.35, 0.65)]
    const reach = widthPx * chance.between(0.5, 0.8)
    return (column, row) => 1 / (1 + ((column - midX) ** 2 + (row - midY) ** 2) / reach ** 2)
  }
  const most = plan.light === 'warm low sun' ? 0.35 : plan.light === 'overcast' ? 0.08 : 0.2
  const [slopeX, slopeY] = [chance.between(-most, most) / widthPx, chance.between(-most, most) / heightPx]
  return (column, row) => 1 + slopeX * (column - widthPx / 2) + slopeY * (row - heightPx / 2)
}

/** A shadow cast across: a bar or a half plane, its edge soft, the sky's blue in it. */
function shadowOver(canvas: Canvas, chance: Chance): (column: number, row: number) => number {
  const angle = chance.between(0, Math.PI)
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)]
  const middle = (canvas.widthPx / 2) * cos + (canvas.heightPx / 2) * sin + chance.between(-0.2, 0.2) * canvas.widthPx
  const half = chance.happens(0.5) ? canvas.widthPx * chance.between(0.05, 0.15) : canvas.widthPx
  const offset = half === canvas.widthPx ? half : 0
  const soft = canvas.widthPx * chance.logBetween(0.003, 0.03)
  return (column, row) => ramp(-soft, soft, half - Math.abs(column * cos + row * sin - middle - offset))
}

/** The mirror image of sun, sky or flash on smooth ground. */
function shineOver(canvas: Canvas, plan: ScenePlan, chance: Chance): (column: number, row: number) => number {
  const [midX, midY] = [canvas.widthPx * chance.between(0.2, 0.8), canvas.heightPx * chance.between(0.2, 0.8)]
  const strength = plan.light === 'flash' ? chance.between(0.8, 2) : plan.light === 'overcast' ? 0.1 : chance.between(0.1, 0.5)
  const [wide, high] = plan.light === 'flash' ? [0.12, 0.12] : [0.5, 0.12]
  return (column, row) => strength * Math.exp(-(((column - midX) / (wide * canvas.widthPx)) ** 2) - ((row - midY) / (high * canvas.widthPx)) ** 2)
}

/** Lights the painted surfaces: what stood for reflectance stands for radiance after it. */
export function lightCanvas(canvas: Canvas, plan: ScenePlan, chance: Chance): void {
  const tint = lightColours[plan.light]
  const fall = fallOff(canvas, plan, chance)
  const shadow = plan.shadow ? shadowOver(canvas, chance) : () => 0
  const depth = chance.between(0.28, 0.5)
  const shine = shineOver(canvas, plan, chance)
  const ripples = { ...noiseOf(chance, 30 * canvas.mmPerPx), acrossY: 0, downX: 0 }
  const ripple = plan.wet ? noisePlane(canvas, { ...ripples, acrossX: ripples.acrossX * 0.3 }) : canvas.rust
  const film = plan.wet ? noisePlane(canvas, noiseOf(chance, 150 * canvas.mmPerPx, softNoise)) : canvas.rust
  for (let row = 0, at = 0; row < canvas.heightPx; row += 1) {
    for (let column = 0; column < canvas.widthPx; column += 1, at += 1) {
      const dark = shadow(column, row)
      const direct = fall(column, row) * (1 - dark * (1 - depth))
      let red = Math.max(0, canvas.red[at] ?? 0)
      let green = Math.max(0, canvas.green[at] ?? 0)
      let blue = Math.max(0, canvas.blue[at] ?? 0)
      let mirrored = (canvas.gloss[at] ?? 0) * shine(column, row) * (1 - dark)
      if (plan.wet) {
        const water = ramp(-1.6, -0.2, film[at] ?? 0)
        // Water in the pores: darker, and the weaker colours the more so.
        const soaked = 0.42 * water
        red *= 1 - soaked * (1 - red)
        green *= 1 - soaked * (1 - green)
        blue *= 1 - soaked * (1 - blue)
        mirrored += water * (0.02 + 0.5 * ramp(1.5, 2.6, ripple[at] ?? 0) * (1 - dark))
      }
      canvas.red[at] = (red + mirrored) * direct * tint[0] * (1 - 0.06 * dark)
      canvas.green[at] = (green + mirrored) * direct * tint[1]
      canvas.blue[at] = (blue + mirrored) * direct * tint[2] * (1 + 0.1 * dark)
    }
  }
}
