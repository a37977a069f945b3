import { useQueryClient } from '@tanstack/react-query'
import { useCallback, useEffect, useMemo, useRef, useState } from 'react'
import { catalogue } from '../../shared-logic/checks/catalogue'
import type { Answer } from '../../shared-logic/survey/answer'
import { assess, assessOne, type Assessed } from '../../shared-logic/survey/assess'
import { placeKey } from '../../shared-logic/survey/keys'
import type { Survey } from '../../shared-logic/survey/records'
import { nextCheck, nextOpen, previousCheck, stopsOf, whereToResume, type Stop } from '../../shared-logic/survey/walk'
import type { Change, Changes, CheckPlace } from './answer-queue'
import { standAt, stoodAt } from './stood-at'
import { useAnswers } from './use-answers'

/** The walk as the screen needs it: where the surveyor stands, what counts, and the ways to move and to answer. */
export interface Walk {
  readonly survey: Survey
  readonly assessed: readonly Assessed[]
  readonly stops: readonly Stop[]
  readonly current: Assessed
  readonly stop: Stop
  /** How the last change at the current check went. */
  readonly change: Change | undefined
  /** What stands in the form of the current check, also when the desk refused it. */
  readonly written: Answer
  readonly goTo: (key: string) => void
  /** To the next open check; past those named, which are being answered this moment. When none is open, to the next. */
  readonly goOn: (answeredNow?: ReadonlySet<string>) => void
  readonly goBack: () => void
  readonly goNext: () => void
  readonly revise: (how: (answer: Answer) => Answer) => void
  readonly putAt: (place: CheckPlace, answer: Answer | undefined) => void
  /** What a check would come to with this answer: for the verdict at once. */
  readonly judge: (answer: Answer) => Assessed
  readonly tryAgain: () => void
  readonly giveUp: () => void
  /** All changes made since the survey was opened, by place. */
  readonly changes: Changes
}

export const placeOf = (assessed: Assessed): CheckPlace => ({ checkId: assessed.check.id, position: assessed.position })

/** Tells the desk where the surveyor stands; only the last place counts, so a lost call is made good by the next move. */
const useStandAt = (surveyId: string, current: Assessed | undefined): void => {
  const client = useQueryClient()
  const told = useRef(stoodAt(client, surveyId))
  const key = current?.key
  const here = current && placeOf(current)
  useEffect(() => {
    if (key === undefined || here === undefined || told.current === key) return
    told.current = key
    standAt(client, surveyId, here).catch(() => {
      told.current = undefined
    })
  })
}

/** Undefined when no check applies to the rig. */
export const useWalk = (survey: Survey, startAt: string | undefined): Walk | undefined => {
  const answers = useAnswers(survey)
  const { rig, ruleBook, purpose, surveyDate } = survey
  const facts = useMemo(() => ({ rig, ruleBook, purpose, surveyDate }), [rig, ruleBook, purpose, surveyDate])
  const assessed = useMemo(() => assess(catalogue, { ...facts, answers: answers.counted }), [facts, answers.counted])
  const stops = useMemo(() => stopsOf(assessed), [assessed])
  const client = useQueryClient()
  const [chosen, setChosen] = useState(startAt ?? stoodAt(client, survey.id) ?? (survey.here && placeKey(survey.here.checkId, survey.here.position)))
  const current = whereToResume(assessed, chosen)
  // The rig's record may do away with the check that is open: the walk goes on at its station, and stays where it went.
  if (current !== undefined && current.key !== chosen) setChosen(current.key)
  const stop = stops.find((each) => each.station === current?.check.station)
  useStandAt(survey.id, current)

  const key = current?.key ?? ''
  const goOn = useCallback(
    (answeredNow?: ReadonlySet<string>) => {
      const others = assessed.filter((each) => each.key === key || answeredNow?.has(each.key) !== true)
      setChosen((nextOpen(others, key) ?? nextCheck(assessed, key))?.key ?? key)
    },
    [assessed, key],
  )
  const step = (to: Assessed | undefined): void => setChosen(to?.key ?? key)
  if (current === undefined || stop === undefined) return undefined
  return {
    survey,
    assessed,
    stops,
    current,
    stop,
    change: answers.changes.get(key),
    written: answers.written(key) ?? { values: {} },
    goTo: setChosen,
    goOn,
    goBack: () => step(previousCheck(assessed, key)),
    goNext: () => step(nextCheck(assessed, key)),
    revise: (how) => answers.change(placeOf(current), how),
    putAt: answers.put,
    judge: (answer) => assessOne(current.check, current.position, answer, facts),
    tryAgain: () => answers.tryAgain(key),
    giveUp: () => answers.giveUp(key),
    changes: answers.changes,
  }
}
