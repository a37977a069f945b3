import { v7 } from 'uuid'
import { catalogue, catalogueVersion } from '../../shared-logic/checks/catalogue'
import type { Rig } from '../../shared-logic/rig/rig'
import { purposes } from '../../shared-logic/survey/purpose'
import { askedChecks, assess, summarize } from '../../shared-logic/survey/assess'
import type { WritableDb } from '../../main/store/database'
import { insertRig } from '../../main/store/rigs'
import { surveySearchText } from '../../main/store/search-text'
import { summaryColumns } from '../../main/store/survey-row'
import { freezeRig, insertSurvey } from '../../main/store/surveys'
import { openYard, type Yard } from '../../main/store/yard'

export const rigCount = 500
export const surveysPerRig = 20

// Invented, like everything in this yard.
const owners = ['Odile Varga', 'Tamsin Orr', 'Þóra Ngũgĩ', 'Bente Holm', 'Rui Estrela', 'Ilse Kaya', 'Noor Whitlock']
const places = ['Lisboa', 'north slip', 'Göteborg', 'the old quay', 'Field 7', 'Saltash yard', '北港']
const pick = <Item>(list: readonly Item[], index: number): Item => list[index % list.length] as Item

const bigRig = (index: number): Rig => ({
  name: `Rig ${String(index).padStart(3, '0')} of ${pick(places, index)}`,
  owner: { name: `${pick(owners, index)} ${index % 40}`, contact: `+00 555 ${String(index).padStart(4, '0')}` },
  trailer: {
    axleCount: 1 + (index % 3), frame: 'galvanized steel', supports: 'bunks', hubLubrication: 'oil bath', brakes: index % 2 === 0 ? 'surge' : 'none',
    identificationNumber: `1M8GDM9AXKP${String(100_000 + index)}`, massKg: 700 + index, spareWheel: true,
  },
  boat: { name: `Boat ${index}`, hullIdentificationNumber: `ABC${String(10_000 + index)}D404`, dryMassKg: 1500 },
})

const keepAnswers = (yard: Yard, surveyId: string, rig: Rig, at: string): void => {
  const insert = yard.database.prepare('INSERT INTO answers (survey_id, check_id, position, answer_json, answered_at) VALUES (?, ?, ?, ?, ?)')
  const answer = JSON.stringify({ values: { condition: 'sound' }, instrument: 'by eye', note: 'as it was found' })
  for (const { check, position } of askedChecks(catalogue, { rig, ruleBook: 'us', purpose: 'yearly' })) insert.run(surveyId, check.id, position, answer, at)
}

const keepSurveys = async (yard: Yard, db: WritableDb, rigId: string, rig: Rig, rigIndex: number): Promise<void> => {
  const summary = summarize(assess(catalogue, { rig, ruleBook: 'us', purpose: 'yearly', surveyDate: '2026-01-01', answers: new Map() }))
  for (let index = 0; index < surveysPerRig; index += 1) {
    const day = new Date(Date.UTC(2016, 0, 1 + ((rigIndex * 7 + index * 181) % 3600)))
    const surveyDate = day.toISOString().slice(0, 10)
    const id = v7({ msecs: day.getTime() })
    const place = pick(places, rigIndex + index)
    const number = `BW-${surveyDate.slice(0, 4)}-${String(rigIndex * surveysPerRig + index + 1).padStart(4, '0')}`
    const isIssued = index > 0
    await insertSurvey(db, {
      id, rig_id: rigId, rig_name: rig.name, search_text: surveySearchText(rig, { place, surveyDate, reportNumber: isIssued ? number : undefined }),
      purpose: pick(purposes, index), survey_date: surveyDate, status: isIssued ? 'issued' : 'under way', rule_book: 'us', catalogue_version: catalogueVersion, zone: 'UTC',
      place, here_check_id: null, here_position: null, ...summaryColumns(summary), report_number: isIssued ? number : null, revision: isIssued ? 1 : 0, change_count: 0,
      started_at: day.toISOString(), discarded_at: null,
    })
    if (isIssued) await freezeRig(db, id, rig)
    keepAnswers(yard, id, rig, day.toISOString())
  }
}

/** Makes a yard of 10,000 surveys of 500 rigs in `folder`, every check of every survey answered, through the store. */
export const makeBigYard = async (folder: string): Promise<void> => {
  const yard = openYard(folder, { programVersion: 'bench', clock: () => new Date() })
  // Made in one go and thrown away after: nothing here needs to outlive a power cut.
  yard.database.pragma('synchronous = OFF')
  yard.database.pragma('cache_size = -400000')
  try {
    for (let index = 0; index < rigCount; index += 1) {
      const rig = bigRig(index)
      const rigId = v7()
      await yard.write(async (db) => {
        await insertRig(db, rigId, rig, new Date().toISOString())
        await keepSurveys(yard, db, rigId, rig, index)
      })
    }
  } finally {
    await yard.close()
  }
}
