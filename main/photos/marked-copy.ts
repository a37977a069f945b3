import { join } from 'node:path'
import sharp, { type OverlayOptions } from 'sharp'
import type { Measurement, PixelPoint } from '../../shared-logic/measuring/measurement'
import { scaleBarOf } from '../../shared-logic/measuring/scale-bar'
import type { UnitSystem } from '../../shared-logic/units/quantity'
import { assetsFolder } from '../assets-folder'
import { drawPath, type Canvas } from './strokes-on-pixels'

/** What is drawn into the copy: rings of the outline, the face where one was outlined, in px of the original; and the spot's number. */
export interface Marks {
  readonly measurement: Pick<Measurement, 'widthPx' | 'heightPx' | 'scale' | 'face'>
  readonly rings: readonly (readonly PixelPoint[])[]
  readonly number?: number
  readonly units: UnitSystem
}

const quality = 84
/** Of the long edge. */
const lineShare = 1 / 500
const textShare = 1 / 40

interface Label {
  readonly input: Buffer
  readonly width: number
  readonly height: number
}

/** Black letters on a white plate. */
const labelOf = async (text: string, heightPx: number): Promise<Label> => {
  const fontfile = join(assetsFolder(), 'fonts', 'AtkinsonHyperlegibleNext-Bold.ttf')
  const letters = await sharp({ text: { text: `<span foreground="#111418" background="#ffffff">${text}</span>`, font: `Atkinson Hyperlegible Next Bold ${heightPx}`, fontfile, dpi: 72, rgba: true } }).flatten({ background: '#ffffff' }).png().toBuffer()
  const pad = Math.round(heightPx * 0.3)
  const { data, info } = await sharp(letters).extend({ top: pad, bottom: pad, left: pad, right: pad, background: '#ffffff' }).png().toBuffer({ resolveWithObject: true })
  return { input: data, width: info.width, height: info.height }
}

const place = (label: Label, [x, y]: PixelPoint, canvas: Canvas): OverlayOptions => ({
  input: label.input,
  left: Math.round(Math.min(Math.max(0, canvas.width - label.width), Math.max(0, x))), top: Math.round(Math.min(Math.max(0, canvas.height - label.height), Math.max(0, y))),
})

/** A short stroke across each end of the bar. */
const ticks = ([x1, y1]: PixelPoint, [x2, y2]: PixelPoint, reach: number): readonly (readonly [PixelPoint, PixelPoint])[] => {
  const long = Math.hypot(x2 - x1, y2 - y1) || 1
  const [acrossX, acrossY] = [(-(y2 - y1) / long) * reach, ((x2 - x1) / long) * reach]
  return [[x1, y1], [x2, y2]].map(([x = 0, y = 0]) => [[x - acrossX, y - acrossY], [x + acrossX, y + acrossY]])
}

/** A copy of the large preview with outline, scale bar and number burnt in, JPEG; the original is not touched. */
export const markedCopy = async (preview: Uint8Array, { measurement, rings, number, units }: Marks): Promise<Uint8Array> => {
  const { data, info } = await sharp(preview).removeAlpha().toColourspace('srgb').raw({ depth: 'uchar' }).toBuffer({ resolveWithObject: true })
  const canvas: Canvas = { width: info.width, height: info.height, data }
  const [stepX, stepY] = [info.width / measurement.widthPx, info.height / measurement.heightPx]
  const onCopy = (points: readonly PixelPoint[]): PixelPoint[] => points.map(([x, y]) => [x * stepX, y * stepY])
  const edge = Math.max(info.width, info.height)
  const weight = Math.max(1.5, edge * lineShare)
  if (measurement.face) drawPath(canvas, onCopy(measurement.face), true, weight * 0.6)
  for (const ring of rings) drawPath(canvas, onCopy(ring), true, weight)
  const bar = scaleBarOf(measurement.scale, rings.flat(), measurement, units)
  const labels: OverlayOptions[] = []
  if (bar) {
    const [from = [0, 0], to = [0, 0]]: PixelPoint[] = onCopy([bar.from, bar.to])
    drawPath(canvas, [from, to], false, weight * 1.4)
    for (const tick of ticks(from, to, weight * 4)) drawPath(canvas, tick, false, weight)
    labels.push(place(await labelOf(bar.label, Math.round(edge * textShare)), [to[0] + weight * 5, to[1] - edge * textShare * 0.85], canvas))
  }
  if (number !== undefined) labels.push(place(await labelOf(String(number), Math.round(edge * textShare * 1.3)), [weight * 3, weight * 3], canvas))
  return sharp(data, { raw: { width: info.width, height: info.height, channels: 3 } }).composite(labels).jpeg({ quality, mozjpeg: true }).toBuffer()
}
