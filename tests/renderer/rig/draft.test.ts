import { describe, expect, it } from 'vitest'
import { candidateOf, draftOf, rigSoFar, withKept, type Draft } from '../../../renderer/rig/draft'
import { readDraft } from '../../../renderer/rig/draft-problems'
import { factsOf, unknownCount } from '../../../renderer/rig/facts'
import { rigGroups } from '../../../renderer/rig/fields'
import { sayHullNumber, sayIdentificationNumber } from '../../../renderer/rig/number-sentences'
import { boatSchema } from '../../../shared-logic/rig/boat'
import { ownerSchema, rigSchema, type Rig } from '../../../shared-logic/rig/rig'
import { trailerSchema, tyreSchema } from '../../../shared-logic/rig/trailer'
import { en } from '../../../shared-logic/words/en'

/** Invented. */
const whole: Rig = {
  name: 'Blue skiff',
  owner: { name: 'Ines Tollemark', address: 'Quay 3', contact: 'ines@example.org' },
  trailer: {
    maker: 'Harrow', model: 'T2', builtYear: 2017, identificationNumber: '1M8GDM9AXKP042788', market: 'north america', registration: 'K 12', frame: 'galvanized steel',
    massKg: 520, maximumMassKg: 2720, axleRatingKg: 1590, lengthM: 7.6, widthM: 2.5, ballToAxleM: 5.1, axleCount: 2, suspension: 'leaf springs', hubLubrication: 'oil bath',
    brakes: 'surge', brakeForm: 'disc', brakedAxleCount: 2, coupler: 'class 3', ballDiameterM: 0.0508,
    tyre: { size: 'ST205/75R14', loadIndex: 100, speedSymbol: 'M', loadRange: 'C', placardPressurePa: 344_738 },
    spareWheel: true, supports: 'bunks', winch: 'hand, strap', lamps: 'LED', plug: '5 flat', jack: false, exposure: 'coast',
  },
  boat: {
    name: 'Mergus', maker: 'Lowfold', model: '21', builtYear: 2016, hullIdentificationNumber: 'ABC45678G586', hull: 'glass fibre', lengthM: 6.4, beamM: 2.4, dryMassKg: 1350,
    engine: 'outboard', engineMassKg: 210, tanks: [{ contents: 'petrol', capacityM3: 0.18 }],
  },
  remarks: 'Kept under a roof.',
}

const read = (draft: Draft) => readDraft(draft, {}, en, 'metric')
const problemAt = (draft: Draft, path: string): string | undefined => {
  const answer = read({ name: 'Hire 12', ...draft })
  return answer.ok ? undefined : answer.problems[path]
}

describe('the register’s form holds a whole rig', () => {
  it('asks for every field the register can keep', () => {
    const paths = new Set(rigGroups.flatMap((group) => group.fields).map((field) => field.path))
    const kept = [
      'name', 'remarks', ...Object.keys(ownerSchema.shape).map((name) => `owner.${name}`), ...Object.keys(trailerSchema.shape).filter((name) => name !== 'tyre').map((name) => `trailer.${name}`),
      ...Object.keys(tyreSchema.shape).map((name) => `trailer.tyre.${name}`), ...Object.keys(boatSchema.shape).map((name) => `boat.${name}`),
    ]
    expect([...paths].toSorted()).toEqual(kept.toSorted())
  })

  it('names each field and each answer in words', () => {
    const all = rigGroups.flatMap((group) => group.fields)
    expect(all.filter(({ path }) => !en.fields[path])).toEqual([])
    const answers = all.flatMap((field) => ('options' in field ? field.options.map((option) => ({ path: field.path, option })) : []))
    expect(answers.filter(({ path, option }) => !en.fieldOptions[path]?.[option])).toEqual([])
  })

  it('gives back a kept rig unchanged', () => {
    expect(rigSchema.parse(candidateOf(draftOf(whole)))).toEqual(whole)
    expect(rigSchema.parse(candidateOf(draftOf({ name: 'The grey one', trailer: {} })))).toEqual({ name: 'The grey one', trailer: {} })
  })

  it('drops nothing the sums are worked from when the rig is edited', () => {
    const kept: Rig = rigSchema.parse({
      ...whole,
      boat: { ...whole.boat, tanks: [{ contents: 'petrol', capacityM3: 0.18 }, { contents: 'fresh water', capacityM3: 0.06 }] },
      loading: { stemAftOfBallM: 1.2, tanks: [{ fill: 0.5, aftOfStemM: 4 }, { fill: 1, aftOfStemM: 2 }], gear: [{ name: 'Anchor', massKg: 15, aftOfStemM: 0.3 }] },
      couplingRatings: { couplerStaticKg: 150 }, stance: { trackM: 1.9 }, tieDown: { straps: [{ position: 'bow', place: 'bow tie', route: 'direct', ratedN: 5_000 }] },
      weighings: [{ method: 'weighbridge', date: '2026-05-01', towAloneKg: 2140, towCoupledKg: 2322, trailerAxlesKg: 1568 }], brakeTest: { date: '2026-05-02', actuatorTravelM: 0.018 },
    })
    const edited = { ...draftOf(kept), 'trailer.massKg': 540 }
    const answer = read(edited)
    expect(answer.ok && withKept(answer.rig, kept, edited)).toEqual({ ...kept, trailer: { ...kept.trailer, massKg: 540 } })
    const withoutPetrol: Draft = { ...edited, 'boat.tanks': [{ key: 1, contents: 'fresh water', capacityM3: 0.06 }, { key: 2, contents: 'diesel', capacityM3: 0.1 }] }
    const second = read(withoutPetrol)
    expect(second.ok && withKept(second.rig, kept, withoutPetrol).loading?.tanks).toEqual([{ fill: 1, aftOfStemM: 2 }, {}])
  })

  it('keeps no disc or drum for a trailer without brakes', () => {
    const answer = read({ ...draftOf(whole), 'trailer.brakes': 'none' })
    expect(answer.ok && answer.rig.trailer.brakeForm).toBeUndefined()
    expect(answer.ok && answer.rig.trailer.brakedAxleCount).toBeUndefined()
  })

  it('takes spaces for nothing known', () => {
    const answer = read({ name: ' Hire 12 ', 'trailer.maker': '   ' })
    expect(answer).toEqual({ ok: true, rig: { name: 'Hire 12', trailer: {} } })
  })
})

describe('what cannot be registered is said at its field', () => {
  it.each<[string, Draft, string, string]>([
    ['a rig without a name', { name: ' ' }, 'name', 'Enter a name, so that the rig can be found again.'],
    ['a negative mass', { 'trailer.massKg': -3 }, 'trailer.massKg', 'More than 0 kg, or leave it empty while it is not known.'],
    ['a trailer of 90 tonnes', { 'trailer.maximumMassKg': 90_000 }, 'trailer.maximumMassKg', 'At most 40,000 kg.'],
    ['a ball of 20 mm', { 'trailer.ballDiameterM': 0.02 }, 'trailer.ballDiameterM', 'At least 30 mm.'],
    ['a load index of 12', { 'trailer.tyre.loadIndex': 12 }, 'trailer.tyre.loadIndex', 'At least 50.'],
    ['a speed symbol that is a digit', { 'trailer.tyre.speedSymbol': '7' }, 'trailer.tyre.speedSymbol', 'One letter, such as N.'],
    ['a tank that holds nothing named', { 'boat.tanks': [{ key: 0, capacityM3: 0.1 }] }, 'boat.tanks.0.contents', 'Say what the tank holds, or remove it.'],
    ['a tank of unknown size', { 'boat.tanks': [{ key: 0, contents: 'diesel' }] }, 'boat.tanks.0.capacityM3', 'Enter the tank’s capacity, or remove it.'],
  ])('%s', (_what, draft, path, sentence) => {
    expect(problemAt(draft, path)).toBe(sentence)
  })

  it('a figure that could not be read stands in the way of saving', () => {
    expect(readDraft({ name: 'Hire 12' }, { 'trailer.massKg': 'not a unit' }, en, 'metric')).toEqual({ ok: false, problems: { 'trailer.massKg': 'not a unit' } })
  })
})

describe('the drawing follows what can be taken so far', () => {
  it('leaves out what is wrong and keeps the rest', () => {
    expect(rigSoFar({ 'trailer.axleCount': 2, 'trailer.massKg': -3, 'trailer.lengthM': 7 })).toEqual({ name: '…', trailer: { axleCount: 2, lengthM: 7 } })
  })
})

describe('what is known and what is not', () => {
  it('lists facts in the reader’s units and says how many are missing', () => {
    const facts = factsOf(whole, ['plate', 'engine'], en, 'us').flatMap((group) => group.facts)
    expect(facts.find((fact) => fact.path === 'trailer.maximumMassKg')?.value).toBe('6,000 lb')
    expect(facts.find((fact) => fact.path === 'boat.tanks')?.value).toBe('Petrol 47.6 gal')
    expect(unknownCount(whole)).toBe(0)
    expect(unknownCount({ ...whole, trailer: { ...whole.trailer, massKg: undefined } })).toBe(1)
  })
})

describe('identification numbers are judged while they are typed', () => {
  it('the specimen of 49 CFR 565.15 holds; one digit off does not', () => {
    // 1M8GDM9A_KP042788 with check digit X is the worked example of the regulation (49 CFR 565.15, Table of the check digit's computation).
    expect(sayIdentificationNumber(en, '1M8GDM9AXKP042788')).toBe('The check digit holds.')
    expect(sayIdentificationNumber(en, '1M8GDM9A1KP042788')).toMatch(/1 stands where X should/)
    expect(sayIdentificationNumber(en, '')).toBeUndefined()
    expect(sayIdentificationNumber(en, 'SN 4471')).toMatch(/^6 of 17 characters/)
  })

  it('every form of hull number has its sentence', () => {
    const said = ['ABC45678G586', 'ABC45678M79D', 'GBABC12345G586', 'ABC', '-?!45678G586', 'ABCO5678G586', 'ABC45678Z586', 'ABC45678G5X6'].map((text) => sayHullNumber(en, text) ?? '')
    expect(new Set(said).size).toBe(said.length)
    expect(said.filter((sentence) => sentence === '' || /[{}]/.test(sentence))).toEqual([])
  })
})
