/** Linear light, 0 to 1, of each sRGB byte (IEC 61966-2-1). */
export const linearOfByte = Float32Array.from({ length: 256 }, (_, byte) => {
  const part = byte / 255
  return part <= 0.040_45 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4
})

/** Light below this is the camera's own noise; added before a ratio is taken, so that black has no colour. */
const darkLight = 0.002
const steps = 4096

const logs = Float32Array.from({ length: steps + 1 }, (_, step) => Math.log(step / steps + darkLight))

/** Natural logarithm of linear light by table: within 1 % above the darkest hundredth. Light 0 to 1. */
export const logOfLight = (light: number): number => logs[Math.floor(light * steps + 0.5)] ?? 0
