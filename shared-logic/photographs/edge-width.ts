import { coloursBehind, mixed, type Samples } from './samples'

/**
 * How wide the sharpest edges of a picture are: the step in lightness across an edge over its steepest slope, px. Grows
 * in proportion to blur and hardly depends on what is shown, for a step and its slope scale together; a Gaussian blur
 * of s px makes a step about 2.5 s px wide, the square root of 2 pi.
 * After Marziliano, Dufaux, Winkler and Ebrahimi, 'A no-reference perceptual blur metric', ICIP 2002, who take the
 * distance between the edge's ends; the slope is taken in its stead because noise breaks an edge's ends off first.
 */

/** So many lines are looked along in each direction, and each is smoothed across over three: noise falls, the edge does not widen. */
const mostLines = 48
/** Of 255: what is fainter than this is noise, shade or a coding artefact rather than an edge. */
const leastStep = 30
/** Of 255 a px: less is no edge's middle. */
const leastSlope = 2
/** An edge ends where it is less steep than this, or than a twentieth of its middle. */
const leastEndSlope = 0.5
const endShare = 0.05
/** The sharpest tenth speaks: the rest may be out of focus for good reason, or soft by nature. */
const sharpestShare = 0.1
/** Fewer edges are no picture to judge by. */
const fewestEdges = 30

/** Widths in steps of a twentieth px, up to 100 px. */
const perPx = 20
const widestPx = 100

/** One line through the picture, in places of the data: its start, from pixel to pixel, and to the line beside it. */
interface Line {
  readonly start: number
  readonly step: number
  readonly aside: number
  readonly length: number
}

/** Slopes along a line smoothed across by 1 2 1 quarters: three lines in one pass, for this is the dearest step. */
const slopesAlong = ({ data }: Samples, [green, blue]: readonly [number, number], { start, step, aside, length }: Line, slopes: Float32Array): void => {
  const sum = (at: number): number => (data[at - aside] ?? 0) + (data[at + aside] ?? 0) + 2 * (data[at] ?? 0)
  let before = 0
  for (let index = 0, place = start; index < length; index += 1, place += step) {
    const here = mixed(sum(place), sum(place + green), sum(place + blue)) / 4
    if (index > 0) slopes[index - 1] = here - before
    before = here
  }
}

/** Adds the width of each edge on a line to the counts. */
const countEdges = (slopes: Float32Array, count: number, widths: Uint32Array): void => {
  const signed = (at: number, sign: number): number => (slopes[at] ?? 0) * sign
  for (let at = 1; at < count - 1; at += 1) {
    const slope = slopes[at] ?? 0
    const steep = Math.abs(slope)
    if (steep < leastSlope || Math.abs(slopes[at - 1] ?? 0) > steep || Math.abs(slopes[at + 1] ?? 0) >= steep) continue
    const sign = slope > 0 ? 1 : -1
    const least = Math.max(leastEndSlope, steep * endShare)
    let step = steep
    for (let left = at - 1; left >= 0 && signed(left, sign) > least; left -= 1) step += signed(left, sign)
    for (let right = at + 1; right < count && signed(right, sign) > least; right += 1) step += signed(right, sign)
    if (step < leastStep) continue
    const bin = Math.min(widths.length - 1, Math.floor((step / steep) * perPx))
    widths[bin] = (widths[bin] ?? 0) + 1
  }
}

const sharpest = (widths: Uint32Array): number | undefined => {
  const count = widths.reduce((sum, each) => sum + each, 0)
  if (count < fewestEdges) return undefined
  let seen = 0
  const bin = widths.findIndex((each) => (seen += each) > count * sharpestShare)
  return (bin + 0.5) / perPx
}

const along = (samples: Samples, lines: readonly Line[]): number | undefined => {
  const widths = new Uint32Array(widestPx * perPx)
  const slopes = new Float32Array(Math.max(samples.width, samples.height))
  const behind = coloursBehind(samples)
  for (const line of lines) {
    slopesAlong(samples, behind, line, slopes)
    countEdges(slopes, line.length - 1, widths)
  }
  return sharpest(widths)
}

/** Spread over the picture, with room for the smoothing at both ends. */
const placesOver = (length: number): number[] => {
  const step = Math.max(2, Math.ceil(length / mostLines))
  return Array.from({ length: Math.max(0, Math.ceil((length - 2) / step)) }, (_, index) => 1 + index * step)
}

/**
 * Width of the sharpest edges, px: about 1 to 3 in focus. The larger of across and down, for a movement of the camera
 * leaves the edges along it sharp. Undefined where there are too few edges to judge by.
 */
export const edgeWidthPx = (samples: Samples): number | undefined => {
  const { width, height, channels } = samples
  const row = width * channels
  const across = along(samples, placesOver(height).map((y) => ({ start: y * row, step: channels, aside: row, length: width })))
  const down = along(samples, placesOver(width).map((x) => ({ start: x * channels, step: row, aside: channels, length: height })))
  return across === undefined || down === undefined ? (across ?? down) : Math.max(across, down)
}
