import { useState } from 'react'
import { namePlace } from '../../shared-logic/words/position'
import type { HandoverView } from './handover-view'
import type { CheckChosen } from './picture'

/** A phone may discard the tab while its camera is open: the choice is kept for as long as the tab is. */
const place = 'bunkwright.chosen'

const remembered = (): string => {
  try {
    return window.sessionStorage.getItem(place) ?? ''
  } catch {
    return ''
  }
}

export const keyOfCheck = ({ checkId, position }: Pick<CheckChosen, 'checkId' | 'position'>): string => `${checkId} @ ${position}`

/** The check the next pictures are for; undefined for none. One that this survey does not ask is none. */
export const useChosen = (stations: HandoverView['stations']): readonly [CheckChosen | undefined, (key: string) => void] => {
  const [key, setKey] = useState(remembered)
  const check = stations?.flatMap(({ checks }) => checks).find((each) => keyOfCheck(each) === key)
  const choose = (next: string): void => {
    setKey(next)
    try {
      window.sessionStorage.setItem(place, next)
    } catch {
      // Storage may be refused; the choice then holds as long as the page.
    }
  }
  return [check && { checkId: check.checkId, position: check.position, title: namePlace(check.title, check.place) }, choose]
}
