import { catalogue } from '../../../shared-logic/checks/catalogue'
import type { Check, Field } from '../../../shared-logic/checks/check'
import { isAsked } from '../../../shared-logic/checks/asked-fields'
import type { Rig } from '../../../shared-logic/rig/rig'
import type { RuleBook } from '../../../shared-logic/rules/rule-book'
import type { Answer, FieldValue } from '../../../shared-logic/survey/answer'
import { askedChecks, assess, summarize } from '../../../shared-logic/survey/assess'
import { placeKey } from '../../../shared-logic/survey/keys'
import { surveySchema, type Photograph, type Survey } from '../../../shared-logic/survey/records'
import type { Verdict } from '../../../shared-logic/survey/verdict'

/** A rig of our own invention with everything known. */
export const fullRig: Rig = {
  name: 'Tern on its tandem trailer',
  owner: { name: 'Marit Solberg', address: '4 Quay Lane\nHollowmere', contact: 'marit@hollowmere.example' },
  trailer: {
    maker: 'Invented Trailers', model: 'T 2400', builtYear: 2019, identificationNumber: '1M8GDM9AXKP042788', market: 'north america', registration: 'HM 4471', frame: 'galvanized steel',
    massKg: 480, maximumMassKg: 2400, axleRatingKg: 1350, lengthM: 7.2, widthM: 2.5, ballToAxleM: 4.9, axleCount: 2, suspension: 'leaf springs', hubLubrication: 'oil bath',
    brakes: 'surge', brakeForm: 'disc', brakedAxleCount: 2, coupler: 'class 3', ballDiameterM: 0.0508, tyre: { size: 'ST205/75R14', loadIndex: 100, speedSymbol: 'M', loadRange: 'C', placardPressurePa: 345_000 },
    spareWheel: true, supports: 'bunks', winch: 'hand, strap', lamps: 'LED', plug: '5 flat', jack: true,
  },
  boat: {
    name: 'Tern', maker: 'Invented Boats', model: 'Inlet 21', builtYear: 2018, hullIdentificationNumber: 'IVB12345F818', hull: 'glass fibre', lengthM: 6.4, beamM: 2.4,
    dryMassKg: 1150, engine: 'outboard', engineMassKg: 210, tanks: [{ contents: 'petrol', capacityM3: 0.18 }],
  },
}

/** Nothing known but a name. */
export const unknownRig: Rig = { name: 'Rig behind the shed', trailer: {} }

/** The same numbers in every run. */
const dice = (seed: number): (() => number) => {
  let state = seed
  return () => {
    state = (state * 1_664_525 + 1_013_904_223) % 4_294_967_296
    return state / 4_294_967_296
  }
}

const valueOf = (field: Field, roll: number): FieldValue => {
  switch (field.kind) {
    case 'choice':
      return field.options[Math.floor(roll * field.options.length)] ?? ''
    case 'reading':
      return field.min + (field.max - field.min) * roll
    case 'count':
      return field.min + Math.floor((field.max - field.min) * roll * 0.2)
    case 'text':
      return field.form === 'tyre date code' ? '2321' : 'as on the plate'
    case 'date':
      return '2026-03-02'
    case 'spots':
      return roll < 0.5 ? [] : [{ id: 'a', place: 'left rail behind the fender', material: 'galvanized steel', kind: 'red rust', areaM2: 0.0012, faceAreaM2: 0.2, pitDepthM: 0.0004, wallM: 0.003 }]
  }
}

const verdictOf = (check: Check, position: string, values: Answer['values'], rig: Rig, ruleBook: RuleBook): Verdict =>
  assess([{ ...check, applies: () => true }], { rig, ruleBook, purpose: 'purchase', surveyDate: '2026-11-24', answers: new Map([[placeKey(check.id, position), { values }]]) })
    .find((each) => each.position === position)?.verdict ?? 'not seen'

/** An answer that comes to one of the wanted verdicts where a few throws find one. */
const answerOf = (check: Check, position: string, rig: Rig, ruleBook: RuleBook, wanted: readonly Verdict[], roll: () => number): Answer['values'] => {
  let last: Answer['values'] = {}
  for (let attempt = 0; attempt < 40; attempt += 1) {
    const values: Record<string, FieldValue> = {}
    for (const field of check.fields) if (isAsked(field, values)) values[field.id] = valueOf(field, roll())
    last = values
    if (wanted.includes(verdictOf(check, position, values, rig, ruleBook))) return values
  }
  return last
}

export interface SampleWishes {
  readonly rig?: Rig
  readonly ruleBook?: RuleBook
  /** Share of the checks that are to be findings, that are set aside, and that stay open. */
  readonly findings?: number
  readonly aside?: number
  readonly open?: number
  readonly photographs?: number
  readonly note?: string
  readonly seed?: number
}

const id = (number: number): string => `019ab000-0000-7000-8000-${String(number).padStart(12, '0')}`
export const sampleHash = (number: number): string => number.toString(16).padStart(2, '0').repeat(32).slice(0, 64)

const samplePhotographs = (count: number, places: readonly { checkId: string; position: string }[]): Photograph[] =>
  Array.from({ length: count }, (_, index): Photograph => ({
    id: id(9_000 + index), sha256: sampleHash(index), caption: index % 3 === 0 ? `Seen from the left, ${index + 1}` : '', fileName: `IMG_${4400 + index}.jpg`, format: 'jpeg', byteCount: 1_200_000,
    widthPx: 4000, heightPx: 3000, addedAt: '2026-11-24T10:00:00Z', source: 'file', quarterTurns: 0, isPrinted: true, ...(index % 4 !== 3 && { takenAt: `2026-11-24T10:${String(index % 60).padStart(2, '0')}:00+01:00` }),
    ...(places.length > 0 && index % 8 !== 7 && places[index % places.length]),
  }))

/** A survey answered by throws of the same dice in every run, from the catalogue as it is. */
export const sampleSurvey = (wishes: SampleWishes = {}): Survey => {
  const { rig = fullRig, ruleBook = 'us', findings = 0.1, aside = 0.05, open = 0.02, photographs = 0, note, seed = 7 } = wishes
  const roll = dice(seed)
  const answers = askedChecks(catalogue, { rig, ruleBook, purpose: 'purchase' }).flatMap(({ check, position }, index): Survey['answers'] => {
    const fate = roll()
    const base = { checkId: check.id, position, answeredAt: '2026-11-24T10:00:00Z' }
    if (fate < open) return []
    if (fate < open + aside) return [{ ...base, answer: { values: {}, aside: { as: index % 3 === 0 ? 'not applicable' : 'not seen', reason: 'Under the cover, which was not taken off.' } } }]
    const wanted: Verdict[] = fate < open + aside + findings ? ['fail', 'advisory'] : ['pass']
    const values = answerOf(check, position, rig, ruleBook, wanted, roll)
    return [{ ...base, answer: { values, ...(note !== undefined && index === 0 && { note }), ...(index % 17 === 5 && { instrument: 'Steel rule, 150 mm' }) } }]
  })
  const known = new Map(answers.map((each) => [placeKey(each.checkId, each.position), each.answer]))
  const assessed = assess(catalogue, { rig, ruleBook, purpose: 'purchase', surveyDate: '2026-11-24', answers: known })
  const places = assessed.filter(({ verdict }) => verdict === 'fail' || verdict === 'advisory').map(({ check, position }) => ({ checkId: check.id, position }))
  return surveySchema.parse({
    id: id(1), rigId: id(2), rigName: rig.name, purpose: 'purchase', surveyDate: '2026-11-24', status: 'under way', summary: summarize(assessed), revision: 0, ruleBook, catalogueVersion: '2026.1',
    zone: 'Europe/Oslo', place: 'Hollowmere, slip 2', rig, answers, photographs: samplePhotographs(photographs, places), reports: [],
  })
}
