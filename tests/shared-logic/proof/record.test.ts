import { createHash } from 'node:crypto'
import { describe, expect, it } from 'vitest'
import { actBetween, addedAct, issuedAct, type RecordedPhotograph, type RecordedReport } from '../../../shared-logic/proof/acts'
import { compareReports, compareRows, compareSurvey, withoutBlame } from '../../../shared-logic/proof/compare-rows'
import { factNames, hashBeforeTheFirst, orderHash, writeEntries, type Act, type Facts, type RecordEnd } from '../../../shared-logic/proof/entry'
import { problemCodes } from '../../../shared-logic/proof/problem'
import type { FoundEntry } from '../../../shared-logic/proof/chain'
import { RecordReader, type ReadRecord } from '../../../shared-logic/proof/read-record'
import { faultsByEnds } from '../../../shared-logic/proof/told-ends'
import { en } from '../../../shared-logic/words/en'
import { sayBeside, sayOutcome, sayProblem, sayReportEnds, sayToDo } from '../../../shared-logic/words/say-proof'

const surveyId = '01900000-0000-7000-8000-000000000001'
const sha256 = (text: string): string => createHash('sha256').update(text).digest('hex')
const facts: Facts = {
  format: 'jpeg', widthPx: 48, heightPx: 32, takenAt: '2026-06-01T10:00:00', latitude: 38.7071, longitude: -9.1355, qualitySha256: null, lookHash: null, firstArrivedAt: '2026-06-15T12:00:00.000Z',
  arrivedAt: '2026-06-15T12:00:00.000Z', source: 'phone', fileName: 'hub.jpg', checkId: null, position: null, caption: '', quarterTurns: 0, isPrinted: true, marksSha256: null, removedAt: null, largePreviewSha256: null, smallPreviewSha256: null,
}
const photograph = (name: string, more: Partial<Facts> = {}): RecordedPhotograph => ({ photographId: `id of ${name}`, sha256: sha256(name), byteCount: 100, facts: { ...facts, fileName: name, ...more } })
const hub = photograph('hub.jpg')
const at = '2026-06-15T12:00:00.000Z'

const write = (acts: readonly Act[], end?: RecordEnd): { entries: FoundEntry[]; end: RecordEnd } => {
  const entries = writeEntries(surveyId, end, acts, at, sha256)
  const last = entries.at(-1)
  if (last === undefined) throw new Error('nothing was written')
  return { entries, end: { entryCount: last.place, lastSha256: last.sha256 } }
}
const readAll = (entries: readonly FoundEntry[], end: RecordEnd | undefined, ofSurvey = surveyId): ReadRecord => {
  const reader = new RecordReader(ofSurvey, sha256)
  for (const entry of entries) reader.take(entry)
  return reader.finish(end)
}
const turned = actBetween(hub, photograph('hub.jpg', { quarterTurns: 1 }))
if (turned === undefined) throw new Error('a turn is no act')

describe('a record', () => {
  it('opens with its survey, and each entry carries place and hash of the one before', () => {
    const { entries } = write([addedAct(hub), turned])
    const read = entries.map(({ text }) => JSON.parse(text ?? '') as Record<string, unknown>)
    expect(read).toMatchObject([{ what: 'opened', surveyId, place: 1, previous: hashBeforeTheFirst }, { what: 'added', place: 2, previous: entries[0]?.sha256 }, { what: 'turned', place: 3, previous: entries[1]?.sha256, to: { quarterTurns: 1 } }])
    for (const { text, sha256: hash } of entries) expect(hash).toBe(sha256(text ?? ''))
  })

  it('carries hash, size, camera time, arrival, source, name and place of every original', () => {
    const { entries } = write([addedAct(photograph('a.jpg', { checkId: 'hubs.oil-level', position: 'axle 1 left' }))])
    expect(JSON.parse(entries[1]?.text ?? '')).toMatchObject({
      photographId: 'id of a.jpg', sha256: sha256('a.jpg'), byteCount: 100, at,
      to: { takenAt: '2026-06-01T10:00:00', arrivedAt: at, source: 'phone', fileName: 'a.jpg', checkId: 'hubs.oil-level', position: 'axle 1 left' },
    })
  })

  it('tells how its photographs stand after all of it, wherever it was gone on with', () => {
    const first = write([addedAct(hub)])
    const more = write([turned, { what: 'put in order', orderSha256: 'an order' }], first.end)
    const record = readAll([...first.entries, ...more.entries], more.end)
    expect(record.problems).toEqual([])
    expect(record.photographs.get(hub.photographId)?.facts).toEqual({ ...facts, quarterTurns: 1 })
    expect(record.orderSha256).toBe('an order')
    expect(record.hashAt(2)).toBe(first.end.lastSha256)
    expect(compareRows([photograph('hub.jpg', { quarterTurns: 1 })], record.photographs)).toEqual([])
    expect(compareRows([hub], record.photographs)).toMatchObject([{ code: 'photograph-changed', values: { fact: 'quarterTurns', recorded: '1', now: '0' } }])
  })

  it('that had no word of copies is silent of them, and a row may have none either: one that names some was tampered with', () => {
    const { largePreviewSha256: _large, smallPreviewSha256: _small, ...known } = facts
    const { entries, end } = write([{ what: 'added', photographId: hub.photographId, sha256: hub.sha256, byteCount: hub.byteCount, to: { ...known, fileName: 'hub.jpg' } }])
    const { photographs } = readAll(entries, end)
    expect(compareRows([hub], photographs)).toEqual([])
    const forged = photograph('hub.jpg', { largePreviewSha256: sha256('forged') })
    expect(compareRows([forged], photographs)).toMatchObject([{ code: 'photograph-changed', values: { fact: 'largePreviewSha256', recorded: '–', now: sha256('forged') } }])
    const made = actBetween(hub, forged)
    if (made === undefined) throw new Error('making copies is no act')
    const later = write([made], end)
    expect(compareRows([forged], readAll([...entries, ...later.entries], later.end).photographs)).toEqual([])
  })

  const survey = { headSha256: sha256('head'), rigSha256: sha256('rig'), answersSha256: sha256('answers') }
  const report: RecordedReport = {
    reportId: 'a report',
    facts: { number: 'BW-2026-0001', revision: 1, issuedAt: at, date: '2026-06-15', verdict: 'fail', documentSha256: sha256('what it says'), pdfSha256: sha256('its pages'), pdfByteCount: 9 },
  }

  it('holds a survey to what it was when it was issued, until it is opened again, and of one opened again before it was recorded says nothing', () => {
    const { entries, end } = write([issuedAct(report, survey)])
    const { issued } = readAll(entries, end)
    expect(compareSurvey(survey, issued)).toEqual([])
    for (const name of ['headSha256', 'rigSha256', 'answersSha256'] as const) expect(compareSurvey({ ...survey, [name]: 'x' }, issued)).toEqual([{ code: 'survey-changed', values: { number: 'BW-2026-0001', revision: 1, surveyFact: name } }])
    const other = { ...survey, answersSha256: 'x' }
    const opened = write([{ what: 'survey opened again' }], end)
    expect(compareSurvey(other, readAll([...entries, ...opened.entries], opened.end).issued)).toEqual([])
    const again = write([issuedAct({ reportId: 'another', facts: { ...report.facts, revision: 2 } }, other)], opened.end)
    expect(compareSurvey(survey, readAll([...entries, ...opened.entries, ...again.entries], again.end).issued)).toMatchObject([{ values: { revision: 2, surveyFact: 'answersSha256' } }])
    const late = write([{ what: 'report entered late', reportId: 'a report', report: report.facts }])
    expect(compareSurvey(other, readAll(late.entries, late.end).issued)).toEqual([])
    const lateAsIssued = write([{ what: 'report entered late', reportId: 'a report', report: report.facts, survey }])
    expect(compareSurvey(other, readAll(lateAsIssued.entries, lateAsIssued.end).issued)).toHaveLength(1)
  })

  it('tells of every report issued: one added, taken out or changed since is named, and one issued twice cannot be', () => {
    const { entries, end } = write([addedAct(hub), issuedAct(report, survey)])
    const record = readAll(entries, end)
    expect(record.problems).toEqual([])
    const compared = (rows: readonly RecordedReport[]) => compareReports(rows, record.reports).map(({ code, values }) => `${code} ${values['reportFact'] ?? ''}`.trim())
    expect(compared([report])).toEqual([])
    expect(compared([])).toEqual(['report-gone'])
    expect(compared([report, { ...report, reportId: 'another' }])).toEqual(['report-unrecorded'])
    const others = { number: 'BW-2026-0002', revision: 2, issuedAt: 'then', date: '2026-06-16', verdict: 'pass', documentSha256: sha256('x'), pdfSha256: sha256('y'), pdfByteCount: 8 } satisfies RecordedReport['facts']
    for (const [name, value] of Object.entries(others)) expect(compared([{ ...report, facts: { ...report.facts, [name]: value } }])).toEqual([`report-row-changed ${name}`])
    const twice = write([issuedAct(report, survey)], end)
    expect(readAll([...entries, ...twice.entries], twice.end).problems).toEqual([{ code: 'entry-impossible', values: { place: 4 } }])
  })

  it('of another survey is found, though all of it fits', () => {
    const { entries, end } = write([addedAct(hub)])
    expect(readAll(entries, end, '01900000-0000-7000-8000-000000000002').problems).toEqual([{ code: 'record-of-another-survey', values: {} }])
  })

  it('names the entry that was taken out, doubled, changed, exchanged, cut off or put on', () => {
    const { entries, end } = write([addedAct(hub), addedAct(photograph('b.jpg')), turned])
    const [one, two, three, four] = entries
    if (!one || !two || !three || !four) throw new Error('four entries were written')
    const codes = (found: readonly FoundEntry[]) => readAll(found, end).problems.map(({ code, values }) => `${code} ${values['place'] ?? ''}`.trim())
    expect(codes([one, two, four])).toContain('entry-missing 3')
    expect(codes([one, two, two, three, four])).toContain('entry-twice 2')
    expect(codes([one, { ...two, text: two.text?.replace('"phone"', '"camera"') }, three, four])).toEqual(['entry-changed 2'])
    expect(codes([one, { ...two, text: undefined }, three, four])).toContain('entry-changed 2')
    expect(codes([one, { ...three, place: 2 }, { ...two, place: 3 }, four])).toContain('entry-out-of-turn 2')
    expect(codes([one, two, three])).toEqual(['record-cut-off'])
    expect(codes([])).toEqual(['record-cut-off'])
    expect(codes([...entries, ...write([turned], end).entries])).toEqual(['record-runs-on'])
    expect(readAll(entries, undefined).problems).toEqual([{ code: 'record-end-missing', values: { kept: 4 } }])
  })

  it('written anew with hashes that fit is still found where it tells of what cannot be, or of what is not so', () => {
    const twice = write([addedAct(hub), addedAct(hub)])
    expect(readAll(twice.entries, twice.end).problems).toEqual([{ code: 'entry-impossible', values: { place: 3 } }])
    const unknown = write([turned])
    expect(readAll(unknown.entries, unknown.end).problems).toEqual([{ code: 'entry-impossible', values: { place: 2 } }])
    const anew = write([addedAct(photograph('hub.jpg', { takenAt: '2026-06-02T10:00:00' }))])
    expect(compareRows([hub], readAll(anew.entries, anew.end).photographs).map(({ values }) => values['fact'])).toEqual(['takenAt'])
  })
})

describe('a record held to ends it once had', () => {
  const { entries, end } = write([addedAct(hub), turned, { what: 'put in order', orderSha256: 'an order' }])
  const last = (count: number): RecordEnd => ({ entryCount: count, lastSha256: entries[count - 1]?.sha256 ?? '' })
  const printed = (...ends: RecordEnd[]) => ends.map((each, index) => ({ number: 'BW-2026-0001', revision: index + 1, end: each }))
  const shorter = readAll(entries.slice(0, 2), last(2))

  it('fits those that are its own', () => {
    expect(faultsByEnds(readAll(entries, end), printed(last(2), last(4)), [last(1), last(3)])).toEqual([])
  })

  it('has lost its last entries where a report prints more, said by the one that prints most', () => {
    expect(faultsByEnds(shorter, printed(last(3), last(4)), [last(4)])).toEqual([{ code: 'record-shorter-than-report', values: { number: 'BW-2026-0001', revision: 2, count: 4, kept: 2 } }])
    expect(faultsByEnds(shorter, [], [last(2), last(3), last(4)])).toEqual([{ code: 'record-shorter-than-list', values: { count: 4, kept: 2 } }])
  })

  it('was written anew where one prints another hash; behind a break of its own that says nothing more', () => {
    const other = { entryCount: 3, lastSha256: sha256('another') }
    expect(faultsByEnds(readAll(entries, end), printed(other), []).map(({ code }) => code)).toEqual(['record-other-than-report'])
    expect(faultsByEnds(readAll(entries, end), [], [other]).map(({ code }) => code)).toEqual(['record-other-than-list'])
    const broken = entries.map((entry) => (entry.place === 3 ? { ...entry, sha256: sha256('x') } : entry))
    expect(faultsByEnds(readAll(broken, end), printed(last(3)), [last(3)])).toEqual([])
  })

  it('and altered is blamed alone: what differs is not said to be changed', () => {
    const record = readAll(entries.map((entry) => (entry.place === 2 ? { ...entry, text: entry.text?.replace('"phone"', '"camera"') } : entry)), end)
    expect(record.brokenFrom).toBe(2)
    expect(withoutBlame(compareRows([photograph('hub.jpg', { quarterTurns: 1 })], record.photographs)).map((problem) => sayProblem(en, problem))).toEqual(['“hub.jpg” and the altered record differ. Came by: camera in the record, phone now.'])
    expect(withoutBlame(compareRows([], record.photographs)).map((problem) => sayProblem(en, problem))).toEqual(['“hub.jpg” is in the altered record and not in the survey.'])
  })
})

describe('an act', () => {
  it.each([
    [{ removedAt: at }, 'removed'], [{ checkId: 'a', position: 'b' }, 'assigned'], [{ marksSha256: 'a' }, 'marked'], [{ quarterTurns: 3 }, 'turned'], [{ caption: 'dark' }, 'captioned'],
    [{ isPrinted: false }, 'left out of print'], [{ largePreviewSha256: 'a', smallPreviewSha256: 'b' }, 'copies made'], [{ removedAt: at, caption: 'dark' }, 'removed'],
  ] as const)('that changes %o is named %s', (to, what) => {
    expect(actBetween(hub, photograph('hub.jpg', to))).toMatchObject({ what, to })
  })

  it('that brings back or chooses is named so, and one that changes nothing is none', () => {
    expect(actBetween(photograph('hub.jpg', { removedAt: at }), hub)).toMatchObject({ what: 'restored', to: { removedAt: null } })
    expect(actBetween(photograph('hub.jpg', { isPrinted: false }), hub)).toMatchObject({ what: 'chosen to print' })
    expect(actBetween(hub, hub)).toBeUndefined()
  })

  it('changes nothing of the original or of how it came in', () => {
    for (const to of [{ fileName: 'b.jpg' }, { takenAt: null }, { latitude: 0, quarterTurns: 1 }]) expect(() => actBetween(hub, { ...hub, facts: { ...facts, ...to } })).toThrow('no act changes')
    expect(() => actBetween(hub, { ...photograph('hub.jpg', { quarterTurns: 1 }), sha256: 'b' })).toThrow('no act changes')
  })
})

it('an order is the same however its photographs are listed, and another for any other place', () => {
  const places = [{ photographId: 'a', place: 0 }, { photographId: 'b', place: 1 }]
  expect(orderHash(places, sha256)).toBe(orderHash(places.toReversed(), sha256))
  expect(orderHash(places, sha256)).not.toBe(orderHash([{ photographId: 'a', place: 1 }, { photographId: 'b', place: 0 }], sha256))
})

describe('the sentences', () => {
  const values = { from: 2, begunAt: '2026-05-03T08:00:00Z', photographs: 3, surveyFact: 'answersSha256', reports: 1, reportFact: 'documentSha256', copy: 'large', original: 'whole', place: 3, kept: 2, count: 4, name: 'hub.jpg', fact: 'marksSha256', recorded: 'a'.repeat(64), now: 'd'.repeat(64), sha256: 'b'.repeat(64), reason: 'EACCES', file: 'x.jpg', number: 'BW-2026-0001', revision: 1 }
  it('have no gap left, cut hashes short and name what was changed', () => {
    for (const code of problemCodes) expect(sayProblem(en, { code, values })).not.toMatch(/[{}]|[0-9a-f]{64}/)
    expect(sayProblem(en, { code: 'photograph-changed', values: { ...values, fact: 'takenAt', recorded: '2026-06-01T10:00:00', now: '–' } })).toBe('“hub.jpg” was changed. Time from the camera: 1 June 2026, 10:00 in the record, none now.')
    expect(sayProblem(en, { code: 'copy-changed', values })).toBe('“hub.jpg”: the large copy, which is shown and printed, was changed. The original is as it came in, and the copy is made again from it before it is used.')
    expect(sayProblem(en, { code: 'copy-missing', values: { ...values, copy: 'small', original: 'harmed' } })).toBe('“hub.jpg”: the small copy, which stands in lists, is missing. The original is not as it came in either, so no other copy can be made.')
    expect(sayProblem(en, { code: 'report-row-changed', values: { number: 'BW-2026-0001', revision: 1, reportFact: 'verdict', recorded: 'fail', now: 'pass' } })).toBe('Report BW-2026-0001, revision 1, was changed. Verdict: Fail in the record, Pass now.')
    expect(Object.keys(en.proof.facts).toSorted()).toEqual([...factNames, 'byteCount'].toSorted())
  })

  it('say what to do, but for copies alone, which are made again by themselves', () => {
    const copy = { code: 'copy-changed', values: { name: 'hub.jpg', copy: 'large', original: 'whole' } } as const
    expect([sayToDo(en, []), sayToDo(en, [copy])]).toEqual([undefined, undefined])
    expect(sayToDo(en, [copy, { code: 'order-changed', values: {} }])).toBe(en.proof.toDo)
    expect(sayToDo(en, [{ code: 'file-missing', values: { name: 'hub.jpg' } }])).toBe(`${en.proof.toDo} ${en.proof.toDoOriginals}`)
    expect(en.proof.toDoOriginals).toContain('where the camera or phone kept it')
  })

  it('name the folder of earlier states only where there are any', () => {
    const missing = [{ code: 'file-missing', values: { name: 'hub.jpg' } }] as const
    expect(sayToDo(en, missing)).not.toContain('backups')
    expect(sayToDo(en, missing, true)).toBe(`${en.proof.toDo} ${en.proof.toDoBackups} ${en.proof.toDoOriginals}`)
  })

  it('say one and many, and of late ones that less is proven', () => {
    const verified = { photographCount: 1, removedCount: 0, byteCount: 1, reports: [], problems: [] }
    expect(sayOutcome(en, verified)).toBe('One photograph, as it came in.')
    expect(sayOutcome(en, { ...verified, photographCount: 12 })).toBe('12 photographs, all as they came in.')
    expect(sayOutcome(en, { ...verified, photographCount: 0 })).toBe('No photograph has come into this survey.')
    expect(sayOutcome(en, { ...verified, problems: [{ code: 'order-changed', values: {} }] })).toBe('One thing is not as it was recorded.')
    expect(sayBeside(en, { ...verified, lateReports: { count: 1, at: '2026-11-27T00:00:00Z' }, withoutCopies: 2 })).toEqual([
      'One report was entered on 27 November 2026, after it was issued: nothing is proven of it before that day.',
      'Of 2 photographs the copies for screen and report were never recorded: they are made anew from the originals before they are used.',
    ])
    expect(sayBeside(en, { ...verified, removedCount: 2, late: { count: 3, at: '2026-11-27T00:00:00Z' } })).toEqual([
      '2 more were removed from the survey; they are kept and looked at too.', '3 were entered on 27 November 2026, after they had come in: nothing is proven of them before that day.',
    ])
    const end = { entryCount: 5, lastSha256: 'c'.repeat(64) }
    expect(sayReportEnds(en, { ...verified, reports: [{ number: 'N', revision: 2, end }, { number: 'N', revision: 1 }] })).toEqual([`Report N, revision 2, prints 5 entries; SHA-256 of the last: ${end.lastSha256}`, 'Report N, revision 1, prints no record of photographs.'])
  })
})
