import { isAsked } from '../../shared-logic/checks/asked-fields'
import { catalogue } from '../../shared-logic/checks/catalogue'
import type { Check } from '../../shared-logic/checks/check'
import { askedChecks, assessOne } from '../../shared-logic/survey/assess'
import { placeKey } from '../../shared-logic/survey/keys'
import type { Survey } from '../../shared-logic/survey/records'
import { en } from '../../shared-logic/words/en'
import { wordsOf } from '../../shared-logic/words/check-sentences'
import { sayPosition } from '../../shared-logic/words/position'
import { passingAnswer } from '../../main/example/passing-answer'

/** What a person does at one check: options picked by id, figures typed as written. */
export interface Entry {
  readonly picked: Readonly<Record<string, string>>
  readonly typed: Readonly<Record<string, string>>
}

export interface Line {
  readonly key: string
  readonly check: Check
  readonly position: string
  /** As the screen heads it. */
  readonly heading: string
  readonly entry: Entry
  /** The window goes on by itself: choices alone, all given, and clean. */
  readonly movesOn: boolean
}

/** Readings of a sound rig as they are written on the spot, in whatever unit the instrument has. */
const readings: Readonly<Record<string, Entry>> = {
  'papers.loaded-mass': { picked: { basis: 'weighed' }, typed: { loaded: '3200 lb' } },
  'coupler.ball-size': { picked: {}, typed: { socket: '2 in', ball: '50.8 mm' } },
  'hubs.oil-level': { picked: {}, typed: { level: '75 %' } },
  'hubs.heat': { picked: {}, typed: { hub: '95 °F', others: '33 °C', air: '18 °C' } },
  'wheels.tread': { picked: {}, typed: { depth: '6.4 mm' } },
  'wheels.pressure': { picked: {}, typed: { pressure: '3.4 bar' } },
  'wheels.nuts': { picked: {}, typed: { missing: '0', loose: '0' } },
  'brakes.actuator-travel': { picked: {}, typed: { travel: '3/8 in' } },
  'lights.flash-rate': { picked: {}, typed: { rate: '90' } },
  'tie-down.label': { picked: { marking: 'working load limit' }, typed: { strength: '1200 lbf' } },
  'tie-down.total': { picked: { basis: 'labels', route: 'none' }, typed: { boat: '2400 lb', bow: '1200 lbf', left: '1200 lbf', right: '1200 lbf' } },
  'tie-down.number': { picked: { basis: 'counted', blocked: 'blocked' }, typed: { count: '3' } },
  'frame.corrosion': { picked: {}, typed: {} },
  'after-use.service-record': { picked: { record: 'told, not shown' }, typed: {} },
}

/** Which kind of gear it is: the first one offered. */
const firstKind = ({ record, fields }: Check): Entry | undefined =>
  record === undefined ? undefined : { picked: Object.fromEntries(fields.flatMap((field) => (field.kind === 'choice' && field.options[0] !== undefined ? [[field.id, field.options[0]]] : []))), typed: {} }

export type Sheet = ReadonlyMap<string, Line>

/** Every check of this survey with what is to be done at it, by the heading the screen shows. */
export const sheetOf = (survey: Survey): Sheet => {
  const facts = { rig: survey.rig, ruleBook: survey.ruleBook, surveyDate: survey.surveyDate }
  const lines = askedChecks(catalogue, survey).map(({ check, position }): Line => {
    const picked = passingAnswer(check, { ...facts, position })
    const entry = readings[check.id] ?? (picked && { picked, typed: {} }) ?? firstKind(check)
    if (entry === undefined) throw new Error(`nobody has said what to do at ${check.id}`)
    const isWhole = check.fields.every((field) => !isAsked(field, entry.picked) || entry.picked[field.id] !== undefined)
    const { verdict } = assessOne(check, position, { values: { ...entry.picked } }, facts)
    return {
      key: placeKey(check.id, position), check, position, entry,
      heading: `${wordsOf(en, check).title}${sayPosition(position, survey.rig.trailer.axleCount)}`,
      movesOn: isWhole && (verdict === 'pass' || verdict === 'not applicable'),
    }
  })
  const sheet = new Map(lines.map((line) => [line.heading, line]))
  if (sheet.size !== lines.length) throw new Error('two checks have the same heading')
  return sheet
}

/** The line of a check at a position. */
export const lineOf = (sheet: Sheet, checkId: string, position = 'rig'): Line => {
  const key = placeKey(checkId, position)
  const line = [...sheet.values()].find((each) => each.key === key)
  if (line === undefined) throw new Error(`${key} is not asked`)
  return line
}
