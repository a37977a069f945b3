import type { KeyboardEvent } from 'react'
import type { PixelPoint } from '../../shared-logic/measuring/measurement'

export const arrowWays: Readonly<Record<string, PixelPoint>> = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1] }

interface Moved {
  readonly onStep: (way: PixelPoint, isLarge: boolean) => void
  readonly onRemove: () => void
}

/** The keys of what lies on a picture: arrows move it, with Shift further, Delete takes it away; nobody around it hears of those. */
export const movingKeys = ({ onStep, onRemove }: Moved) => (event: KeyboardEvent): void => {
  const way = arrowWays[event.key]
  if (way !== undefined) onStep(way, event.shiftKey)
  else if (event.key === 'Delete' || event.key === 'Backspace') onRemove()
  else return
  event.preventDefault()
  event.stopPropagation()
}
