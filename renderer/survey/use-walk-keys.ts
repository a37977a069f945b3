import { useEffect, useRef } from 'react'

/** What single keys do on the walk. `answer` takes the number struck, 1 to 9. */
export interface WalkKeys {
  readonly answer: (number: number) => void
  readonly goOn: () => void
  readonly goBack: () => void
  readonly goNext: () => void
  readonly photograph: () => void
  readonly camera: () => void
  readonly phone: () => void
  readonly note: () => void
  readonly notSeen: () => void
  readonly notApplicable: () => void
  readonly overrule: () => void
  readonly clear: () => void
  readonly help: () => void
}

/** Where letters are typed. */
export const isWriting = (target: Element): boolean => target.closest('input:not([type=radio], [type=checkbox], [type=range], [type=file]), textarea, select, [contenteditable], [role=spinbutton], [role=textbox]') !== null
/** A part of a date takes digits, but has no use for Enter. */
const isDatePart = (target: Element): boolean => target.matches('[role=spinbutton]:not(input)')
/** Where Enter already means something, other than an answer that is given. */
const takesEnter = (target: Element): boolean => target.closest('button, a, summary, [role=button], [role=switch]') !== null && target.closest('[role=radio][aria-checked=true]') === null
/** Where arrows already mean something. */
const takesArrows = (target: Element): boolean => target.closest('[role=radiogroup], [role=slider], input, [role=listbox], [role=toolbar], [data-scrolled=true]') !== null

/** A key that means one thing everywhere on the walk; those that depend on where the focus stands are below. */
const letters: Readonly<Record<string, keyof Omit<WalkKeys, 'answer'>>> = {
  j: 'goNext', k: 'goBack', p: 'photograph', t: 'camera', u: 'phone', n: 'note', s: 'notSeen', a: 'notApplicable', o: 'overrule', c: 'clear', '?': 'help',
}

const meaningOf = (event: KeyboardEvent, target: Element): keyof Omit<WalkKeys, 'answer'> | undefined => {
  if (event.key === 'Enter') return takesEnter(target) ? undefined : 'goOn'
  if (event.key === 'ArrowDown') return takesArrows(target) ? undefined : 'goNext'
  if (event.key === 'ArrowUp') return takesArrows(target) ? undefined : 'goBack'
  return letters[event.key.toLowerCase()]
}

/**
 * Single keys on the walk. Never while something is typed, never with a modifier, never under an open dialog;
 * all of them can be turned off (WCAG 2.1.4).
 */
export const useWalkKeys = (keys: WalkKeys, isOn: boolean): void => {
  const latest = useRef(keys)
  useEffect(() => {
    latest.current = keys
  })
  useEffect(() => {
    if (!isOn) return undefined
    const strike = (event: KeyboardEvent): void => {
      const { target } = event
      if (event.defaultPrevented || event.repeat || event.ctrlKey || event.metaKey || event.altKey || !(target instanceof Element)) return
      if ((isWriting(target) && !(event.key === 'Enter' && isDatePart(target))) || document.querySelector('[role=dialog], [role=alertdialog], [role=listbox]') !== null) return
      if (/^[1-9]$/.test(event.key)) {
        event.preventDefault()
        latest.current.answer(Number(event.key))
        return
      }
      const meaning = meaningOf(event, target)
      if (meaning === undefined) return
      event.preventDefault()
      latest.current[meaning]()
    }
    // Captured on the way down: React Aria's buttons keep their key events to themselves.
    document.addEventListener('keydown', strike, true)
    return () => document.removeEventListener('keydown', strike, true)
  }, [isOn])
}
