import { useEffect, useRef, useState } from 'react'
import type { Assessed } from '../../shared-logic/survey/assess'
import { becauseOf, wordsOf } from '../../shared-logic/words/check-sentences'
import { sayPosition } from '../../shared-logic/words/position'
import { say } from '../../shared-logic/words/say'
import { useUnits } from '../parts/use-settings'
import { useWords } from '../parts/use-words'
import type { Walk } from './use-walk'

const stateOf = (each: Assessed): string => `${each.verdict} ${each.found?.outcome ?? ''} ${each.open}`

/** What has just come out, for the live region: 'Oil condition left front: Fail. The oil is milky.' */
export const useVerdictNews = (walk: Walk | undefined): string => {
  const words = useWords()
  const units = useUnits()
  const [news, setNews] = useState('')
  const before = useRef<ReadonlyMap<string, string>>(undefined)
  const assessed = walk?.assessed
  const axleCount = walk?.survey.rig.trailer.axleCount
  useEffect(() => {
    if (assessed === undefined) return
    const last = before.current
    before.current = new Map(assessed.map((each) => [each.key, stateOf(each)]))
    if (last === undefined) return
    const changed = assessed.filter((each) => last.get(each.key) !== stateOf(each))
    const [first] = changed
    if (first === undefined) return
    const { check, more } = words.screens.survey
    const title = wordsOf(words, first.check).title
    const because = becauseOf(words, first, units) ?? first.answer?.aside?.reason ?? ''
    const one = first.open ? more.cleared : say(check.said, { title, position: sayPosition(first.position, axleCount), verdict: words.verdicts[first.verdict], because }, units)
    setNews(changed.length === 1 ? one : `${one} ${say(check.sameDone, { count: changed.length - 1, answer: words.verdicts[first.verdict] }, units)}`)
  }, [assessed, axleCount, words, units])
  return news
}
