/** Samples of 8 bits as the imaging library hands them out: row by row, 1 to 4 channels, sRGB. */
export interface Samples {
  readonly width: number
  readonly height: number
  readonly channels: 1 | 2 | 3 | 4
  readonly data: Uint8Array
}

/** How far green and blue stand behind red: nowhere in a grey picture. */
export const coloursBehind = ({ channels }: Samples): readonly [green: number, blue: number] => (channels < 3 ? [0, 0] : [1, 2])

/** Lightness of red, green and blue, all as they are stored. Source of the shares: ITU-R BT.709, 3.2. */
export const mixed = (red: number, green: number, blue: number): number => 0.2126 * red + 0.7152 * green + 0.0722 * blue

/** Lightness as it is stored, 0 to 255, of the pixel at a place in the data. */
export const lightnessAt = (data: Uint8Array, at: number, green: number, blue: number): number => mixed(data[at] ?? 0, data[at + green] ?? 0, data[at + blue] ?? 0)
