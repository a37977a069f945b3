import { checkOf } from '../../shared-logic/checks/catalogue'
import type { PhoneState } from '../../shared-logic/phone/phone-state'
import type { Photograph } from '../../shared-logic/survey/records'
import { wordsOf } from '../../shared-logic/words/check-sentences'
import type { Words } from '../../shared-logic/words/en'
import { namePlace, sayPosition } from '../../shared-logic/words/position'
import { say } from '../../shared-logic/words/say'

type PanelWords = Words['screens']['phone']['panel']

/** Nothing in this panel has a unit. */
export const fill = (phrase: string, values: Readonly<Record<string, string | number>>): string => say(phrase, values, 'metric')

export const countOf = (phrases: PanelWords['arrivedCount'] | PanelWords['closedNews'] | PanelWords['arrivedNews'], count: number): string => {
  if (count === 0) return phrases.none
  return count === 1 ? phrases.one : fill(phrases.many, { count })
}

export const sayTimeLeft = (said: PanelWords, closesAt: string, nowMs: number): string => {
  const leftMs = Date.parse(closesAt) - nowMs
  return leftMs < 60_000 ? said.lastMinute : fill(said.minutesLeft, { minutes: Math.ceil(leftMs / 60_000) })
}

export const nameOfPhone = (said: PanelWords, phone: NonNullable<PhoneState['phone']>): string => (phone.name === '' ? said.unnamed : phone.name)

/** A phone is heard every few seconds while someone looks at its page. */
const quietAfterMs = 12_000

export const sayHeard = (said: PanelWords, { lastHeardAt }: NonNullable<PhoneState['phone']>, nowMs: number): string => {
  const agoMs = nowMs - Date.parse(lastHeardAt)
  if (agoMs < quietAfterMs) return said.heardNow
  return agoMs < 60_000 ? fill(said.heardSeconds, { seconds: Math.floor(agoMs / 1_000) }) : fill(said.heardMinutes, { minutes: Math.floor(agoMs / 60_000) })
}

/** 'Oil level, left front', or that it stands at no check. */
export const sayCheckOf = (words: Words, { checkId, position }: Photograph, axleCount: number | undefined): string => {
  const check = checkId === undefined ? undefined : checkOf(checkId)
  if (check === undefined) return words.screens.phone.panel.noCheck
  return namePlace(wordsOf(words, check).title, position === undefined ? '' : sayPosition(position, axleCount))
}
