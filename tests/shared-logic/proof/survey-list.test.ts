import { createHash } from 'node:crypto'
import { describe, expect, it } from 'vitest'
import type { FoundEntry } from '../../../shared-logic/proof/chain'
import { compareList, faultsOfList } from '../../../shared-logic/proof/compare-list'
import { writeChain, type RecordEnd } from '../../../shared-logic/proof/entry'
import { listOpening, SurveyListReader, type ReadList, type SurveyAct } from '../../../shared-logic/proof/survey-list'

const sha256 = (text: string): string => createHash('sha256').update(text).digest('hex')
const at = '2026-06-15T12:00:00.000Z'
const end = (entryCount: number): RecordEnd => ({ entryCount, lastSha256: sha256(String(entryCount)) })
const write = (acts: readonly SurveyAct[]): FoundEntry[] => writeChain(listOpening, undefined, acts, at, sha256)
const endOf = (entries: readonly FoundEntry[]): RecordEnd | undefined => {
  const last = entries.at(-1)
  return last && { entryCount: last.place, lastSha256: last.sha256 }
}
const read = (entries: readonly FoundEntry[], kept: RecordEnd | undefined): ReadList => {
  const reader = new SurveyListReader(sha256)
  for (const entry of entries) reader.take(entry)
  return reader.finish(kept)
}
const whole = (acts: readonly SurveyAct[]): ReadList => read(write(acts), endOf(write(acts)))
const begun = { what: 'survey begun', surveyId: 'a' } as const
const opened = { what: 'record opened', surveyId: 'a', end: end(2) } as const
const issued = { what: 'report issued', surveyId: 'a', end: end(9), number: 'BW-2026-0001' } as const
const discarded = { what: 'survey discarded', surveyId: 'b' } as const
const acts: readonly SurveyAct[] = [begun, { what: 'survey begun', surveyId: 'b' }, opened, discarded, issued]

describe('the yard’s list of surveys', () => {
  it('tells when each was begun, whether it was discarded, its report number, and where its record stood', () => {
    const list = whole(acts)
    expect(list.broken).toBeUndefined()
    expect([...list.surveys]).toEqual([['a', { at, isDiscarded: false, number: 'BW-2026-0001', ends: [end(2), end(9)] }], ['b', { at, isDiscarded: true, number: undefined, ends: [] }]])
    expect(faultsOfList(list, 2)).toEqual([])
  })

  it('that was altered is believed of no end behind its first break', () => {
    const entries = write(acts)
    const altered = entries.map((entry) => (entry.place === 5 ? { ...entry, text: entry.text?.replace('"b"', '"c"') } : entry))
    const list = read(altered, endOf(entries))
    expect(list.surveys.get('a')?.ends).toEqual([end(2)])
    expect(faultsOfList(list, 2)).toEqual([{ code: 'list-altered', values: { place: 5, from: 5 } }])
  })

  it('tells of nothing that cannot be: a survey begun twice, or discarded before it was begun', () => {
    expect(whole([begun, begun]).broken?.code).toBe('entry-impossible')
    expect(whole([discarded]).broken?.code).toBe('entry-impossible')
  })

  it('that lost its last entries, its end or all of itself says which', () => {
    const entries = write(acts)
    const faults = (found: readonly FoundEntry[], kept: RecordEnd | undefined): string[] => faultsOfList(read(found, kept), 2).map(({ code }) => code)
    expect(faults(entries.slice(0, 4), endOf(entries))).toEqual(['list-cut-off'])
    expect(faults(entries, undefined)).toEqual(['list-end-missing'])
    expect(faults([], undefined)).toEqual(['list-missing'])
    expect(faultsOfList(read([], undefined), 0)).toEqual([])
  })
})

describe('the surveys of a yard, held to the list', () => {
  const list = whole(acts)
  const held = (surveys: Readonly<Record<string, boolean>>, recorded: readonly string[] = []): unknown =>
    Object.fromEntries([...compareList(new Map(Object.entries(surveys).map(([id, isDiscarded]) => [id, { isDiscarded }])), recorded, list)].map(([id, problems]) => [id, problems.map(({ code }) => code)]))

  it('are right where each is there, standing or discarded as it was entered', () => {
    expect(held({ a: false, b: true })).toEqual({})
  })

  it('are wrong where one is gone, added, discarded or brought back by itself, or only a record of it lies there', () => {
    expect(held({ b: true })).toEqual({ a: ['survey-gone'] })
    expect(held({ a: false, b: true, c: false })).toEqual({ c: ['survey-unlisted'] })
    expect(held({ a: true, b: false })).toEqual({ a: ['survey-put-away'], b: ['survey-brought-back'] })
    expect(held({ a: false, b: true }, ['a', 'c'])).toEqual({ c: ['survey-unknown'] })
  })
})
