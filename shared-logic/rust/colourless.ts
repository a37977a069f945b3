import type { Pixels } from '../measuring/pixels'

/** Bytes that a channel may stand off in a grey or toned picture: JPEG's own rounding. */
const apartBytes = 8
/** Share of the pixels looked at, from which those above that make the picture coloured. */
const colouredShare = 0.002
/** A toned picture is tinted from dark to light, as no photograph of metal is. */
const tintedShare = 0.9

/** Green's lead over red and blue's over green, of every seventh pixel: an odd step, so that no pattern of the picture is stepped along with. */
const leadsOf = ({ width, height, data }: Pixels): { readonly light: Uint8Array, readonly overRed: Int16Array, readonly overGreen: Int16Array } => {
  const count = Math.ceil((width * height) / 7)
  const leads = { light: new Uint8Array(count), overRed: new Int16Array(count), overGreen: new Int16Array(count) }
  for (let index = 0, byte = 0; index < count; index += 1, byte += 28) {
    const green = data[byte + 1] ?? 0
    leads.light[index] = green
    leads.overRed[index] = green - (data[byte] ?? 0)
    leads.overGreen[index] = (data[byte + 2] ?? 0) - green
  }
  return leads
}

const meanAtLight = (light: Uint8Array, lead: Int16Array): Float64Array => {
  const [sums, counts] = [new Float64Array(256), new Float64Array(256)]
  light.forEach((at, index) => {
    sums[at] = (sums[at] ?? 0) + (lead[index] ?? 0)
    counts[at] = (counts[at] ?? 0) + 1
  })
  return sums.map((sum, at) => sum / Math.max(1, counts[at] ?? 0))
}

/** Whether the picture is grey, or toned in one colour as an old print is: there is no colour to find rust by. */
export const colourless = (pixels: Pixels): boolean => {
  const { light, overRed, overGreen } = leadsOf(pixels)
  const [red, blue] = [meanAtLight(light, overRed), meanAtLight(light, overGreen)]
  let [coloured, offTone, tinted, middling] = [0, 0, 0, 0]
  light.forEach((at, index) => {
    const [lead, further] = [overRed[index] ?? 0, overGreen[index] ?? 0]
    const isColoured = Math.max(Math.abs(lead), Math.abs(further), Math.abs(lead + further)) > apartBytes
    if (isColoured) coloured += 1
    if (Math.max(Math.abs(lead - (red[at] ?? 0)), Math.abs(further - (blue[at] ?? 0))) > apartBytes) offTone += 1
    if (at < 50 || at > 205) return
    middling += 1
    if (isColoured) tinted += 1
  })
  const few = colouredShare * light.length
  return coloured < few || (offTone < few && middling > 0 && tinted > tintedShare * middling)
}
