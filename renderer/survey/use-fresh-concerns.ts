import { useMemo, useState } from 'react'
import { alikeTo, type Alike } from '../../shared-logic/photographs/alike'
import { warningsOf } from '../../shared-logic/photographs/warnings'
import type { Photograph, Survey } from '../../shared-logic/survey/records'

/** A photograph that came in while this was on the screen, with something to be said of it. */
export interface Concern {
  readonly photograph: Photograph
  /** Whether something may be wrong for its check: then taking it again would help. */
  readonly isWarned: boolean
  /** The same picture, or one that looks like it, of those that were there before. */
  readonly alike: readonly Alike[]
}

export interface FreshConcerns {
  readonly concerns: readonly Concern[]
  readonly understood: () => void
}

/** One of a series at one check is no concern for looking like the others of it. */
const isOfSeries = (a: Photograph, b: Photograph): boolean => a.source === 'camera' && a.checkId === b.checkId && a.position === b.position

const concernOf = (photograph: Photograph, before: readonly Photograph[]): Concern => ({
  photograph, isWarned: warningsOf(photograph).length > 0, alike: alikeTo(photograph, before.filter((each) => !isOfSeries(photograph, each))),
})

/** What is to be said of photographs that have come in since, from whichever door, until it is read. */
export const useFreshConcerns = ({ photographs }: Survey): FreshConcerns => {
  const [read, setRead] = useState<ReadonlySet<string>>(() => new Set(photographs.map(({ id }) => id)))
  // Each is looked at once, against those before it: five hundred that come in together are not compared anew with every one.
  const [known] = useState(() => new WeakMap<Photograph, Concern>())
  const concerns = useMemo(() => {
    const standing = new Set(photographs.map(({ id }) => id))
    return photographs.flatMap((photograph, index) => {
      if (read.has(photograph.id)) return []
      const concern = known.get(photograph) ?? concernOf(photograph, photographs.slice(0, index))
      known.set(photograph, concern)
      return concern.isWarned || concern.alike.some(({ id }) => standing.has(id)) ? [concern] : []
    })
  }, [photographs, read, known])
  return { concerns, understood: () => setRead(new Set(photographs.map(({ id }) => id))) }
}
