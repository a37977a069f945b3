import { describe, expect, it } from 'vitest'
import { timeTaken } from '../../../shared-logic/photographs/time-taken'
import { sampleReport } from '../../main/report/sample-report'
import { sampleSurvey } from '../../main/report/sample-survey'

const arrived = { addedAt: '2026-07-01T22:30:05Z' }

describe('the time a photograph was taken', () => {
  it('is the camera’s word where its file has one, however it came', () => {
    for (const source of ['file', 'camera', 'phone'] as const) expect(timeTaken({ ...arrived, source, takenAt: '2026-06-30T09:00:00+02:00' }, 'UTC')).toEqual({ at: '2026-06-30T09:00:00+02:00', by: 'camera' })
  })

  it('is when it came in for a picture this program took, by the clock on the wall of the survey', () => {
    // Summer time in Oslo is UTC+2, in New York UTC−4: IANA time zone database.
    expect(timeTaken({ ...arrived, source: 'camera' }, 'Europe/Oslo')).toEqual({ at: '2026-07-02T00:30:05', by: 'program' })
    expect(timeTaken({ ...arrived, source: 'camera' }, 'America/New_York')).toEqual({ at: '2026-07-01T18:30:05', by: 'program' })
    expect(timeTaken({ ...arrived, source: 'camera' }, 'No/Such_Zone')).toEqual({ at: '2026-07-01T22:30:05', by: 'program' })
  })

  it('is not known of a file or a phone’s picture without one: it may be old', () => {
    expect(timeTaken({ ...arrived, source: 'file' }, 'UTC')).toBeUndefined()
    expect(timeTaken({ ...arrived, source: 'phone' }, 'UTC')).toBeUndefined()
  })

  it('stands in a report as this program’s, never as the camera’s', () => {
    const sample = sampleSurvey({ photographs: 2 })
    const [first, second] = sample.photographs
    if (!first || !second) throw new Error('two photographs')
    const { photographs, method } = sampleReport({}, { survey: { ...sample, zone: 'Europe/Oslo', photographs: [{ ...first, ...arrived, source: 'camera', takenAt: undefined }, second] } })
    const own = photographs.find(({ sha256 }) => sha256 === first.sha256)
    expect(own).toMatchObject({ byOwnClock: '2 July 2026, 00:30, by this program’s clock' })
    expect(own?.fromTheCamera).toBeUndefined()
    expect(photographs.find(({ sha256 }) => sha256 === second.sha256)?.byOwnClock).toBeUndefined()
    expect(method.join(' ')).toContain('the instant a picture taken with the program’s own camera came in')
  })
})
