import type { Compilable } from 'kysely'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import type { ReadableDb } from '../../../main/store/database'
import { photographsOf } from '../../../main/store/photographs'
import { pageOfReports } from '../../../main/store/reports'
import { listRigs, pageOfRigs } from '../../../main/store/rigs'
import { fold, searchWords } from '../../../main/store/search-text'
import { countOfSurveys, listSurveys, pageOfSurveys } from '../../../main/store/surveys'
import type { Yard } from '../../../main/store/yard'
import { aRig, keepRig, keepSurvey, newFolder, open } from './a-yard'

const page = { offset: 0, limit: 50 }
let yard: Yard
let elanId = ''

beforeAll(async () => {
  yard = open(newFolder())
  await yard.write(async (db) => {
    const elan = aRig('Élan', { owner: { name: 'Odile Varga' }, trailer: { identificationNumber: '1M8GDM9AXKP042788' } })
    const barge = aRig('Barge 100% "oak"')
    elanId = await keepRig(db, elan)
    const bargeId = await keepRig(db, barge)
    await keepRig(db, aRig('alder without surveys'))
    await keepSurvey(db, elanId, elan, '2026-05-01', 'Lisboa')
    await keepSurvey(db, elanId, elan, '2026-06-01', 'Porto')
    await keepSurvey(db, bargeId, barge, '2026-05-20', '北港')
    for (let index = 0; index < 300; index += 1) await keepSurvey(db, bargeId, barge, `2025-0${1 + (index % 9)}-11`)
  })
  yard.database.exec('ANALYZE')
})
afterAll(() => yard.close())

const planOf = (query: Compilable): Promise<string> => {
  const { sql, parameters } = query.compile()
  return Promise.resolve(yard.database.prepare<unknown[], { detail: string }>(`EXPLAIN QUERY PLAN ${sql}`).all(...parameters).map(({ detail }) => detail).join('\n'))
}

const lists: readonly { readonly what: string; readonly query: (db: ReadableDb) => Compilable; readonly index: string }[] = [
  { what: 'the newest surveys', query: (db) => pageOfSurveys(db, page), index: 'USING INDEX surveys_by_date' },
  { what: 'a later page of surveys', query: (db) => pageOfSurveys(db, { offset: 200, limit: 50 }), index: 'USING INDEX surveys_by_date' },
  { what: 'the surveys of one rig', query: (db) => pageOfSurveys(db, { ...page, rigId: elanId }), index: 'USING INDEX surveys_by_rig' },
  { what: 'how many surveys there are', query: (db) => countOfSurveys(db, {}), index: 'USING COVERING INDEX surveys_by_' },
  { what: 'rigs by name', query: (db) => pageOfRigs(db, page), index: 'USING INDEX rigs_by_name' },
  { what: 'reports', query: (db) => pageOfReports(db, page), index: 'USING INDEX reports_by_issue' },
]

describe('a list comes from its index, without sorting', () => {
  test.each(lists)('$what', async ({ query, index }) => {
    const plan = await yard.read((db) => planOf(query(db)))
    expect(plan).toContain(index)
    expect(plan).not.toContain('TEMP B-TREE')
  })
})

describe('a search comes from the search index, without reading every survey', () => {
  test('surveys', async () => {
    expect(await yard.read((db) => planOf(pageOfSurveys(db, { ...page, search: 'lisboa' })))).toMatch(/surveys_search VIRTUAL TABLE INDEX/)
  })
  test('rigs, by their own words and their surveys’', async () => {
    const plan = await yard.read((db) => planOf(pageOfRigs(db, { ...page, search: 'lisboa' })))
    expect(plan).toMatch(/rigs_search VIRTUAL TABLE INDEX/)
    expect(plan).toMatch(/surveys_search VIRTUAL TABLE INDEX/)
  })
})

const found = async (search: string): Promise<string[]> =>
  (await yard.read((db) => listSurveys(db, { ...page, search }))).surveys.map((survey) => `${survey.rigName} ${survey.surveyDate}`)

describe('a survey is found', () => {
  test.each([
    ['by its rig without accents', 'elan', 2],
    ['by its rig with other accents and capitals', 'ÉLÀN', 2],
    ['by its owner', 'varga', 2],
    ['by the end of the identification number', '042788', 2],
    ['by its place', 'porto', 1],
    ['by rig and place together', 'elan lis', 1],
    ['by two letters', 'po', 1],
    ['by letters of another writing', '北港', 1],
    ['by its month', '2026-05', 2],
    ['not by what it does not say', 'porto lisboa', 0],
    ['by marks that are taken as they are', '100% "oak"', 1],
    ['not by a mark that stands for any letter elsewhere', 'p_rto', 0],
    ['not by a word of the search language', 'elan NOT porto', 0],
  ])('%s', async (_how, search, count) => {
    expect((await found(search)).filter((name) => !name.includes('2025'))).toHaveLength(count)
  })
})

test('surveys stand newest first', async () => {
  expect(await found('elan')).toEqual(['Élan 2026-06-01', 'Élan 2026-05-01'])
})

test('rigs stand by name whatever their accents, each with its newest survey and how many it has', async () => {
  const { rigs, total } = await yard.read((db) => listRigs(db, page))
  expect(total).toBe(3)
  expect(rigs.map(({ rig, surveyCount, latest }) => [rig.name, surveyCount, latest?.surveyDate])).toEqual([
    ['alder without surveys', 0, undefined], ['Barge 100% "oak"', 301, '2026-05-20'], ['Élan', 2, '2026-06-01'],
  ])
})

test('a rig is found by where it was surveyed, and without surveys by its own words', async () => {
  const names = async (search: string) => (await yard.read((db) => listRigs(db, { ...page, search }))).rigs.map(({ rig }) => rig.name)
  expect(await names('porto')).toEqual(['Élan'])
  expect(await names('alder')).toEqual(['alder without surveys'])
  expect(await names('al')).toEqual(['alder without surveys'])
})

test('an empty search finds everything', () => {
  expect(searchWords('  ')).toEqual([])
  expect(searchWords(undefined)).toEqual([])
  expect(fold('Ångström ÉLAN')).toBe('angstrom elan')
})

test('a survey without photographs has none', async () => {
  expect(await yard.read((db) => photographsOf(db, elanId))).toEqual([])
})
