/**
 * A position as a person says it. Ids already speak ('axle 1 left'); this turns them into the trade's order
 * ('left front' on a tandem). `axleCount` may be unknown.
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
  const named = /^(?:lamp|reflector|strap|chain|bunk) (.+)$/.exec(position)
  if (position.startsWith('bunk ') || position.startsWith('chain ')) return `${named?.[1] ?? position} ${position.split(' ')[0] ?? ''}`
  if (position.startsWith('strap ')) return `${named?.[1] ?? position} strap`
  return named?.[1] ?? position
}
