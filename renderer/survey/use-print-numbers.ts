import { useMemo } from 'react'
import { catalogue, catalogueVersion } from '../../shared-logic/checks/catalogue'
import { sortPhotographs } from '../../shared-logic/report/number-photographs'
import { assess } from '../../shared-logic/survey/assess'
import { factsOf } from '../../shared-logic/survey/facts'
import { findingsOf } from '../../shared-logic/survey/findings'
import type { Survey } from '../../shared-logic/survey/records'

/** By id, the number a photograph has in the report. None before it is issued, nor where checks have since come to stand otherwise. */
export const usePrintNumbers = (survey: Survey): ReadonlyMap<string, number> =>
  useMemo(() => {
    if (survey.status !== 'issued' || survey.catalogueVersion !== catalogueVersion) return new Map()
    const assessed = assess(catalogue, factsOf(survey))
    return new Map(sortPhotographs(survey.photographs, findingsOf(assessed), assessed).map(({ photograph, number }) => [photograph.id, number]))
  }, [survey])
