import type { KeyboardEvent } from 'react'
import type { SheetAct } from './act-bar'

const plain: Readonly<Record<string, SheetAct>> = { Enter: 'open', m: 'move', l: 'turnLeft', r: 'turnRight', x: 'printing', c: 'caption', F2: 'caption', Delete: 'remove', Backspace: 'remove' }
const withAlt: Readonly<Record<string, SheetAct>> = { ArrowLeft: 'earlier', ArrowUp: 'earlier', ArrowRight: 'later', ArrowDown: 'later' }

/**
 * What a key struck on a photograph means; undefined for a key that is the list's or the browser's. Letters can be turned
 * off, as on the walk (WCAG 2.1.4); Enter, F2, Delete and what is struck with Alt are no single characters.
 */
export const actOfKey = ({ key, altKey, ctrlKey, metaKey }: Pick<KeyboardEvent, 'key' | 'altKey' | 'ctrlKey' | 'metaKey'>, areLettersOn: boolean): SheetAct | undefined => {
  if (ctrlKey || metaKey || (key.length === 1 && !areLettersOn)) return undefined
  return altKey ? withAlt[key] : plain[key.length === 1 ? key.toLowerCase() : key]
}
