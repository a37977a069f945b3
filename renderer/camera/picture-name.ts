/** Plain ASCII: letters of other kinds lose their marks, the rest becomes strokes. */
const plain = (text: string): string =>
  text.normalize('NFKD').replaceAll(/\p{M}/gu, '').toLowerCase().replaceAll(/[^a-z0-9]+/g, '-').replaceAll(/^-|-$/g, '').slice(0, 80)

const two = (number: number): string => String(number).padStart(2, '0')

/**
 * What a picture's file is called: the place it shows and the time of this machine, 'oil-condition-left-front
 * 2026-11-27 14.05.11.jpg'. `within` counts the pictures of one second from 0.
 */
export const pictureName = (place: string, at: Date, within: number): string => {
  const day = `${at.getFullYear()}-${two(at.getMonth() + 1)}-${two(at.getDate())}`
  const time = `${two(at.getHours())}.${two(at.getMinutes())}.${two(at.getSeconds())}`
  return `${plain(place) || 'photograph'} ${day} ${time}${within > 0 ? `-${within + 1}` : ''}.jpg`
}
