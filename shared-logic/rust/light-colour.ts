import type { Mask } from '../measuring/pixels'
import { logOfLight } from './linear-light'
import type { Planes } from './planes'

/** The light's own colour as log ratios, to be taken off every pixel's. */
export interface LightColour {
  readonly redness: number
  readonly yellowness: number
}

/** How far a camera that corrects the light itself leaves grey from grey: low sun and shade with its own error on top. */
const reach = { redness: 0.35, yellowness: 0.55 }
/** Grey further from the middle needs more pixels to be believed; standard deviations of what cameras leave. */
const usual = { redness: 0.16, yellowness: 0.25 }
const cell = 0.05
/** Pixels darker or lighter than this are noise or burnt out. */
const [darkest, lightest] = [0.015, 0.85]
/** Fewer than this among the pixels looked at are no surface to trust. */
const leastShare = 0.04
/** The face is zinc, aluminium or paint more often than what lies behind it is grey. */
const weightOfFace = 3

const weightedCell = (counts: Float64Array, across: number, down: number, column: number, row: number): number => {
  let sum = 0
  for (let y = Math.max(0, row - 1); y <= Math.min(down - 1, row + 1); y += 1) for (let x = Math.max(0, column - 1); x <= Math.min(across - 1, column + 1); x += 1) sum += counts[y * across + x] ?? 0
  const [redness, yellowness] = [(column + 0.5) * cell - reach.redness, (row + 0.5) * cell - reach.yellowness]
  return sum * Math.exp(-((redness / usual.redness) ** 2 + (yellowness / usual.yellowness) ** 2) / 2)
}

/** The commonest nearly grey colour of the picture, the face counting more: zinc, aluminium, road, card and grey paint take the light's colour on. None where there is little grey. */
export const lightColourOf = ({ width, height, red, green, blue }: Planes, face: Mask | undefined): LightColour => {
  const [across, down] = [Math.round((2 * reach.redness) / cell), Math.round((2 * reach.yellowness) / cell)]
  const counts = new Float64Array(across * down)
  let looked = 0
  for (let y = 0; y < height; y += 3) {
    for (let x = 0; x < width; x += 3) {
      const at = y * width + x
      const light = green[at] ?? 0
      const weight = face?.data[at] === 1 ? weightOfFace : 1
      looked += weight
      if (light < darkest || light > lightest) continue
      const log = logOfLight(light)
      const column = Math.floor((logOfLight(red[at] ?? 0) - log + reach.redness) / cell)
      const row = Math.floor((log - logOfLight(blue[at] ?? 0) + reach.yellowness) / cell)
      if (column >= 0 && column < across && row >= 0 && row < down) counts[row * across + column] = (counts[row * across + column] ?? 0) + weight
    }
  }
  let [best, most] = [-1, 0]
  for (let index = 0; index < counts.length; index += 1) {
    const here = weightedCell(counts, across, down, index % across, Math.floor(index / across))
    if (here > most) [best, most] = [index, here]
  }
  if (best < 0 || most < leastShare * looked) return { redness: 0, yellowness: 0 }
  return { redness: ((best % across) + 0.5) * cell - reach.redness, yellowness: (Math.floor(best / across) + 0.5) * cell - reach.yellowness }
}
