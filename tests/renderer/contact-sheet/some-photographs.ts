import type { Photograph, Survey } from '../../../shared-logic/survey/records'

export const oil = 'hubs.oil-condition'
export const level = 'hubs.oil-level'

const id = (number: number): string => `0197c000-0000-7000-8000-${String(number).padStart(12, '0')}`

export const photographOf = (number: number, more: Partial<Photograph> = {}): Photograph => ({
  id: id(number), sha256: String(number).padStart(64, '0'), caption: '', fileName: `IMG_${number}.jpg`, format: 'jpeg', byteCount: 10, widthPx: 4000, heightPx: 3000,
  addedAt: '2026-11-20T10:00:00Z', source: 'file', quarterTurns: 0, isPrinted: true, ...more,
})

/** A milky hub seen twice, its level, and one of nothing, each of its own hour. */
export const fourPhotographs = [
  photographOf(1, { takenAt: '2026-11-20T09:30:00', addedAt: '2026-11-20T10:03:00Z' }),
  photographOf(2, { checkId: level, position: 'axle 1 left', caption: 'Level from the side', takenAt: '2026-11-20T09:10:00', addedAt: '2026-11-20T10:02:00Z' }),
  photographOf(3, { checkId: oil, position: 'axle 1 left', addedAt: '2026-11-20T10:01:00Z', isPrinted: false }),
  photographOf(4, { checkId: oil, position: 'axle 1 left', source: 'phone', takenAt: '2026-11-19T18:00:00+01:00', addedAt: '2026-11-20T10:00:00Z' }),
] as const

/** A tandem with oil-bath hubs before a tow, its left front hub found milky. */
export const aSurvey = (photographs: readonly Photograph[], more: Partial<Survey> = {}): Survey => ({
  id: '0197b000-0000-7000-8000-000000000001', rigId: '0197a000-0000-7000-8000-000000000001', rigName: 'Tandem', purpose: 'before tow', surveyDate: '2026-11-20', status: 'under way', revision: 0,
  summary: { verdict: 'not seen', tallies: { pass: 0, advisory: 0, fail: 0, 'not seen': 0, 'not applicable': 0 }, asked: 0, open: 0 },
  ruleBook: 'us', catalogueVersion: 'test', zone: 'UTC', rig: { name: 'Tandem', trailer: { axleCount: 2, hubLubrication: 'oil bath', brakes: 'surge', brakeForm: 'disc' } },
  answers: [{ checkId: oil, position: 'axle 1 left', answer: { values: { condition: 'milky' } }, answeredAt: '2026-11-20T10:00:00Z' }],
  photographs: [...photographs], reports: [], ...more,
})
