import { useMemo, useState } from 'react'
import { alikeTo } from '../../shared-logic/photographs/alike'
import type { Photograph, Survey } from '../../shared-logic/survey/records'
import { sayAlike, sayWarnings } from '../../shared-logic/words/say-photograph'
import { useWords } from '../parts/use-words'

/** A photograph that came in while this was on the screen, and what may be wrong with it. */
export interface Concern {
  readonly photograph: Photograph
  /** What may be wrong for its check: taking it again would help. */
  readonly warnings: readonly string[]
  /** That it is like another one. */
  readonly alike: readonly string[]
}

export interface FreshConcerns {
  readonly concerns: readonly Concern[]
  readonly understood: () => void
}

/**
 * What is to be said of photographs that have come in since, from whichever door, until it is read. One of a series at
 * one check is no concern for looking like the others of it.
 */
export const useFreshConcerns = (survey: Survey): FreshConcerns => {
  const words = useWords()
  const [read, setRead] = useState<ReadonlySet<string>>(() => new Set(survey.photographs.map(({ id }) => id)))
  const concerns = useMemo(() => {
    const fresh = survey.photographs.filter(({ id }) => !read.has(id))
    return fresh.flatMap((photograph) => {
      const warnings = sayWarnings(words, photograph)
      const elsewhere = alikeTo(photograph, survey.photographs).filter(({ id }) => !isBeside(photograph, survey.photographs.find((each) => each.id === id)))
      const alike = sayAlike(words, photograph, elsewhere, survey)
      return warnings.length + alike.length === 0 ? [] : [{ photograph, warnings, alike }]
    })
  }, [survey, read, words])
  return { concerns, understood: () => setRead(new Set(survey.photographs.map(({ id }) => id))) }
}

const isBeside = (a: Photograph, b: Photograph | undefined): boolean => a.source === 'camera' && a.checkId === b?.checkId && a.position === b?.position
