import { describe, expect, it } from 'vitest'
import { findingsOf } from '../../../shared-logic/survey/findings'
import { assess } from '../../../shared-logic/survey/assess'
import { catalogue } from '../../../shared-logic/checks/catalogue'
import { factsOf } from '../../../shared-logic/survey/facts'
import type { Photograph, Survey } from '../../../shared-logic/survey/records'
import type { ReportDocument } from '../../../shared-logic/report/document'
import { sampleReport } from '../../main/report/sample-report'
import { sampleSurvey } from '../../main/report/sample-survey'

const survey = sampleSurvey({ findings: 0.1, photographs: 200 })
const assessed = assess(catalogue, factsOf(survey))

const reportOf = (photographs: readonly Photograph[], more: Partial<Survey> = {}): ReportDocument =>
  sampleReport({}, { survey: { ...survey, ...more, photographs: [...photographs] } })
const namesOf = (report: ReportDocument): string[] => report.photographs.map(({ fileName }) => fileName)
const isAt = (place: { readonly checkId?: string | undefined; readonly position?: string | undefined }) => (photograph: Photograph): boolean =>
  photograph.checkId === place.checkId && photograph.position === place.position

/** The first finding that wants a photograph and has two at least. */
const wanting = findingsOf(assessed).find(({ check, position }) => check.photograph === true && survey.photographs.filter(isAt({ checkId: check.id, position })).length > 1)
if (wanting === undefined) throw new Error('no finding of the sample has two photographs')
const place = { checkId: wanting.check.id, position: wanting.position }
const findingIn = (report: ReportDocument) => report.findings.find(({ checkId, position }) => checkId === place.checkId && position === place.position)

describe('the photographs of a report', () => {
  it('are those chosen, numbered without a gap, and no other is named anywhere', () => {
    const some = survey.photographs.map((photograph, index) => ({ ...photograph, isPrinted: index % 3 !== 0 }))
    const report = reportOf(some)
    expect(namesOf(report).toSorted()).toEqual(some.filter(({ isPrinted }) => isPrinted).map(({ fileName }) => fileName).toSorted())
    expect(report.photographs.map(({ number }) => number)).toEqual(report.photographs.map((_, index) => index + 1))
    const named = [...report.findings.flatMap(({ photographs }) => photographs), ...report.stations.flatMap(({ checks }) => checks.flatMap(({ photographs }) => photographs))]
    expect(named.every((number) => number >= 1 && number <= report.photographs.length)).toBe(true)
    for (const { fileName, isPrinted } of some) expect(JSON.stringify(report).includes(`"${fileName}"`)).toBe(isPrinted)
  })

  it('stand within a check in the order they were put in, and so do those of no check', () => {
    const turned = survey.photographs.toReversed()
    const report = reportOf(turned)
    const ofPlace = turned.filter(isAt(place)).map(({ fileName }) => fileName)
    expect(ofPlace.length).toBeGreaterThan(1)
    expect(namesOf(report).filter((name) => ofPlace.includes(name))).toEqual(ofPlace)
    const loose = turned.filter(({ checkId }) => checkId === undefined).map(({ fileName }) => fileName)
    expect(loose.length).toBeGreaterThan(1)
    expect(namesOf(report).slice(-loose.length)).toEqual(loose)
  })

  it('say how many more are kept with the survey, of a finding and of the whole', () => {
    const own = survey.photographs.filter(isAt(place))
    const withoutOne = reportOf(survey.photographs.map((photograph) => ({ ...photograph, isPrinted: photograph.id !== own[0]?.id })))
    expect(findingIn(withoutOne)?.photographsKept).toBe('One further photograph is kept with the survey and not printed here.')
    expect(withoutOne.photographsKept).toBe('One further photograph is kept with the survey and not printed here.')
    const none = reportOf(survey.photographs.map((photograph) => ({ ...photograph, isPrinted: false })))
    expect(findingIn(none)).toMatchObject({ photographs: [], photographsKept: `${own.length} photographs are kept with the survey and not printed here.` })
    expect(none.photographsKept).toBe('200 photographs are kept with the survey and not printed here.')
  })

  it('left out are evidence all the same: the finding is not said to want one', () => {
    const none = reportOf(survey.photographs.map((photograph) => ({ ...photograph, isPrinted: false })))
    expect(findingIn(none)?.withoutPhotograph).toBeUndefined()
    const taken = reportOf(survey.photographs.filter((photograph) => !isAt(place)(photograph)))
    expect(findingIn(taken)?.withoutPhotograph).toBeDefined()
    expect(findingIn(taken)?.photographsKept).toBeUndefined()
  })

  it('say nothing of that where all are printed', () => {
    const report = reportOf(survey.photographs)
    expect(report.photographsKept).toBeUndefined()
    expect(report.findings.every(({ photographsKept }) => photographsKept === undefined)).toBe(true)
  })
})
