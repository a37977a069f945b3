import type { Pixels } from '../measuring/pixels'

/** Bytes that channels may stand apart in a grey picture: JPEG's own rounding. */
const apartBytes = 8
/** Share of pixels above that, of those looked at, from which a picture counts as coloured. */
const colouredShare = 0.002

/** Whether the picture is grey, or toned in one hue all over: there is no colour to find rust by. */
export const colourless = ({ width, height, data }: Pixels): boolean => {
  let coloured = 0
  let looked = 0
  // An odd step, so that no pattern of the picture is stepped along with.
  for (let at = 0; at < width * height; at += 7, looked += 1) {
    const [red = 0, green = 0, blue = 0] = [data[4 * at], data[4 * at + 1], data[4 * at + 2]]
    if (Math.max(red, green, blue) - Math.min(red, green, blue) > apartBytes) coloured += 1
  }
  return coloured < colouredShare * looked
}
