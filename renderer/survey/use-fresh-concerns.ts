import { useEffect, useMemo, useState } from 'react'
import { alikeTo, type Alike } from '../../shared-logic/photographs/alike'
import { warningKeys, warningsOf } from '../../shared-logic/photographs/warnings'
import type { Photograph, Survey } from '../../shared-logic/survey/records'
import type { Photographs } from './use-photographs'

/** A photograph that came in of late, with something to be said of it. */
export interface Concern {
  readonly photograph: Photograph
  /** Whether something may be wrong for its check: then taking it again would help. */
  readonly isWarned: boolean
  /** By what is worst of it, the gravest first: what leaves it of no use, then what makes it poor, then that it looks like others. */
  readonly rank: number
  /** The same picture, or one that looks like it, of those that were there before. */
  readonly alike: readonly Alike[]
}

/** One of a series at one check is no concern for looking like the others of it. */
const isOfSeries = (a: Photograph, b: Photograph): boolean => a.source === 'camera' && a.checkId === b.checkId && a.position === b.position

const concernOf = (photograph: Photograph, before: readonly Photograph[]): Concern => {
  const [worst] = warningsOf(photograph)
  return { photograph, isWarned: worst !== undefined, rank: worst ? warningKeys.indexOf(worst.key) : warningKeys.length, alike: alikeTo(photograph, before.filter((each) => !isOfSeries(photograph, each))) }
}

/** What is to be said of photographs that have come in since, from whichever door, until it is read; the gravest first, of equals the latest. */
export const useFreshConcerns = ({ photographs }: Survey, { read, lookAt }: Photographs): readonly Concern[] => {
  useEffect(() => lookAt(photographs), [lookAt, photographs])
  // Each is looked at once, against those before it: five hundred that come in together are not compared anew with every one.
  const [known] = useState(() => new WeakMap<Photograph, Concern>())
  return useMemo(() => {
    if (read === undefined) return []
    const standing = new Set(photographs.map(({ id }) => id))
    const concerns = photographs.flatMap((photograph, index) => {
      if (read.has(photograph.id)) return []
      const concern = known.get(photograph) ?? concernOf(photograph, photographs.slice(0, index))
      known.set(photograph, concern)
      return concern.isWarned || concern.alike.some(({ id }) => standing.has(id)) ? [concern] : []
    })
    return concerns.toReversed().toSorted((a, b) => a.rank - b.rank)
  }, [photographs, read, known])
}
