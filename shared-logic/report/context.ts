import { catalogue } from '../checks/catalogue'
import type { Harm } from '../proof/originals'
import { assess, type Assessed } from '../survey/assess'
import { factsOf } from '../survey/facts'
import { findingsOf } from '../survey/findings'
import type { Survey } from '../survey/records'
import type { UnitSystem } from '../units/quantity'
import type { Words } from '../words/en'
import { sayPosition } from '../words/position'
import { countLeftOut, sortPhotographs, type NumberedPhotograph } from './number-photographs'

/** What every part of the report is made from, worked out once. */
export interface ReportContext {
  readonly survey: Survey
  readonly words: Words
  readonly units: UnitSystem
  readonly assessed: readonly Assessed[]
  /** Gravest first; a finding's number is its place here, from 1. */
  readonly findings: readonly Assessed[]
  readonly photographs: readonly NumberedPhotograph[]
  /** The place of a check as the reader says it; empty for the rig as a whole. */
  readonly place: (position: string) => string
  /** A finding's number by its key. */
  readonly findingNumber: (key: string) => number | undefined
  /** Numbers of the photographs that belong to a check at its place. */
  readonly photographsOf: (key: string) => number[]
  /** How many photographs of a check are kept with the survey and do not print. */
  readonly leftOutOf: (key: string) => number
  /** What was found of originals, by their hash; undefined where the survey is only a file and there was none to hold to. */
  readonly harmed: Harmed | undefined
}

/** Originals that are not as they came in, by their hash; every other one was looked at and found to be. */
export type Harmed = ReadonlyMap<string, Harm>

export const contextOf = (survey: Survey, words: Words, units: UnitSystem, harmed?: Harmed): ReportContext => {
  const assessed = assess(catalogue, factsOf(survey))
  const findings = findingsOf(assessed)
  const numbers = new Map(findings.map((finding, index) => [finding.key, index + 1]))
  const photographs = sortPhotographs(survey.photographs, findings, assessed)
  const leftOut = countLeftOut(survey.photographs, assessed)
  return {
    survey,
    words,
    units,
    assessed,
    findings,
    photographs,
    place: (position) => sayPosition(position, survey.rig.trailer.axleCount),
    findingNumber: (key) => numbers.get(key),
    photographsOf: (key) => photographs.filter((photograph) => photograph.owner?.key === key).map(({ number }) => number),
    leftOutOf: (key) => leftOut.get(key) ?? 0,
    harmed,
  }
}
