const ends = ['front', 'middle', 'rear']

/** Side first, then end, then what it is: 'side marker front left' of a lamp is the 'left front side marker lamp'. */
const sideFirst = (where: string, noun: string): string => {
  const words = where.split(' ')
  const side = ['left', 'right'].includes(words.at(-1) ?? '') ? words.splice(-1) : []
  const end = words.length > 1 && ends.includes(words.at(-1) ?? '') ? words.splice(-1) : []
  return [...side, ...end, ...words, noun].join(' ')
}

/**
 * A position as a person says it. Ids already speak ('axle 1 left'); this turns them into the trade's order
 * ('left front' on a tandem), side first everywhere. `axleCount` may be unknown.
 */
export const sayPosition = (position: string, axleCount: number | undefined): string => {
  if (position === 'rig') return ''
  const axle = /^axle (\d)(?: (left|right))?$/.exec(position)
  if (axle) {
    const number = Number(axle[1])
    const place = axleCount === 2 ? ['front', 'rear'][number - 1] : axleCount === 3 ? ['front', 'middle', 'rear'][number - 1] : undefined
    const side = axle[2]
    if (side === undefined) return place === undefined ? 'axle' : `${place} axle`
    return place === undefined ? side : `${side} ${place}`
  }
  if (position.endsWith(' brackets')) return position
  const named = /^(lamp|reflector|strap|chain|bunk) (.+)$/.exec(position)
  return named?.[1] === undefined || named[2] === undefined ? position : sideFirst(named[2], named[1])
}

/** A check at its place in one name: 'Oil level, left front'; where the place says what it is, the place alone: 'Right stop lamp'. */
export const namePlace = (title: string, place: string): string => {
  if (place === '') return title
  return place.toLowerCase().endsWith(` ${title.toLowerCase()}`) ? `${place.charAt(0).toUpperCase()}${place.slice(1)}` : `${title}, ${place}`
}
