import { describe, expect, it } from 'vitest'
import { refusalOfIssues } from '../../../main/desk/input-refusal'
import { rigSchema, type Rig } from '../../../shared-logic/rig/rig'
import { faultsOf } from '../../../shared-logic/sums/check-input'
import { defaultSumsSettings } from '../../../shared-logic/sums/settings'
import { sumsOf, type Sums } from '../../../shared-logic/sums/sums'
import { en } from '../../../shared-logic/words/en'
import { sayField, sayRefusal } from '../../../shared-logic/words/say-refusal'
import { saySums } from '../../../shared-logic/words/sums'
import { wholeRig, without } from './a-rig'

const sums = (rig: Rig) => sumsOf(rig, 'us', defaultSumsSettings)

const wrong: readonly [what: string, change: (copy: Rig) => void, code: string, field: string, restOnIt: (sums: Sums) => readonly unknown[]][] = [
  ['a front axle ahead of the ball', (copy) => { copy.trailer.ballToAxleM = 0.3 }, 'sums.axle-ahead-of-ball', 'trailer.ballToAxleM', ({ balance }) => [balance.lever, balance.bounds, balance.tanks, balance.goal, balance.axleLoads, balance.stability, balance.standing]],
  ['a stem and transom further apart than the boat is long', (copy) => { copy.loading = { ...copy.loading, transomAftOfBallM: 9 } }, 'sums.longer-than-the-boat', 'loading.stemAftOfBallM', ({ balance }) => [balance.lever, balance.bounds, balance.tanks, balance.goal, balance.standing]],
  ['a stem behind its transom', (copy) => { copy.loading = { ...copy.loading, transomAftOfBallM: 1 } }, 'sums.stem-behind-transom', 'loading.stemAftOfBallM', ({ balance }) => [balance.lever, balance.bounds, balance.tanks, balance.goal, balance.standing]],
  ['a boat’s centre behind its transom', (copy) => { copy.loading = { ...copy.loading, boatCentreAftOfStemM: 7 } }, 'sums.behind-the-transom', 'loading.boatCentreAftOfStemM', ({ balance }) => [balance.lever, balance.bounds, balance.tanks, balance.goal]],
  ['a tank behind the transom', (copy) => { copy.loading = { ...copy.loading, tanks: [{ fill: 0.5, aftOfStemM: 6.5 }] } }, 'sums.behind-the-transom', 'loading.tanks.0.aftOfStemM', ({ balance }) => [balance.lever, balance.bounds, balance.tanks, balance.goal]],
  ['more in a tank than it holds', (copy) => { copy.loading = { ...copy.loading, tanks: [{ contentsM3: 0.21, aftOfStemM: 4 }] } }, 'sums.tank-overfull', 'loading.tanks.0.contentsM3', ({ balance, load }) => [balance.lever, balance.goal, load.total.massKg, load.items.find(({ id }) => id === 'tank 1')?.massKg]],
  ['share and volume that disagree', (copy) => { copy.loading = { ...copy.loading, tanks: [{ fill: 0.9, contentsM3: 0.1, aftOfStemM: 4 }] } }, 'sums.tank-said-twice', 'loading.tanks.0.contentsM3', ({ balance, load }) => [balance.lever, balance.goal, load.total.massKg, load.items.find(({ id }) => id === 'tank 1')?.massKg]],
  ['contents of a tank that is not there', (copy) => { copy.loading = { ...copy.loading, tanks: [{ fill: 0 }, { fill: 0 }, { fill: 0.5 }] } }, 'sums.no-such-tank', 'loading.tanks.2', ({ load }) => [load.items.find(({ id }) => id === 'tank 3')]],
  ['a load index that does not exist', (copy) => { copy.trailer.tyre = { loadIndex: 131 } }, 'sums.no-such-load-index', 'trailer.tyre.loadIndex', ({ tyres, load }) => [tyres.capacity, ...['tyres together', 'one tyre'].map((id) => load.lines.find(({ limit }) => limit.id === id)?.limit.ratingKg), ...tyres.loads.map(({ line }) => line.reserveKg)]],
  ['one side of an axle', (copy) => { copy.weighings = [{ method: 'each axle', date: '2026-05-01', axles: [{ leftKg: 300 }, { massKg: 700 }] }] }, 'sums.half-missing', 'weighings.0.axles.0.rightKg', ({ balance, tyres }) => [balance.weighed[0], balance.comparison, tyres.loads.find(({ from }) => from === 'weighed')]],
  ['one axle of two', (copy) => { copy.weighings = [{ method: 'each axle', date: '2026-05-01', axles: [{ massKg: 700 }] }] }, 'sums.axles-do-not-match', 'weighings.0.axles', ({ balance, tyres }) => [balance.weighed[0], balance.comparison, tyres.loads.find(({ from }) => from === 'weighed')]],
  ['a coupling heavier than the whole', (copy) => { copy.weighings = [{ method: 'nose raised', date: '2026-05-01', totalKg: 100, couplingLevelKg: 190, couplingRaisedKg: 90, couplingHeightM: 0.4, raisedRad: 0.1 }] }, 'sums.part-over-whole', 'weighings.0.totalKg', ({ balance }) => [balance.weighed[0], balance.comparison]],
  ['travel longer than the stroke', (copy) => { copy.brakeTest = { date: '2026-05-01', actuatorTravelM: 0.1, actuatorStrokeM: 0.09 } }, 'sums.travel-over-stroke', 'brakeTest.actuatorTravelM', ({ brakes }) => [brakes.actuator]],
  ['scales that show nothing', (copy) => { copy.weighings = [{ method: 'tongue and axles', date: '2026-05-01', couplingKg: 180, axlesKg: 0 }] }, 'sums.scale-empty', 'weighings.0.axlesKg', ({ balance }) => [balance.weighed[0], balance.comparison]],
  ['one brake of an axle', (copy) => { copy.brakeTest = { date: '2026-05-01', axles: [{ leftN: 900 }] } }, 'sums.half-missing', 'brakeTest.axles.0.rightN', ({ brakes }) => [brakes.deceleration, brakes.imbalance[0]]],
]

describe('input that cannot be right', () => {
  it('a right rig has no fault', () => expect(faultsOf(wholeRig())).toEqual([]))
  it.each(wrong)('%s is refused with its field named in a sentence', (_what, change, code, field) => {
    const [fault] = faultsOf(without(wholeRig(), change))
    expect(fault).toMatchObject({ code, field })
    expect(fault && sayRefusal(en, fault)).not.toMatch(/\{|sums\./)
  })
  it.each(wrong)('no number rests on %s', (_what, change, _code, field, restOnIt) => {
    const all = sums(without(wholeRig(), change))
    expect(all.faults.map((fault) => fault.field)).toContain(field)
    expect(restOnIt(all).filter((value) => value !== undefined)).toEqual([])
    expect(JSON.stringify(saySums(en, all, 'metric', '2026-11-25'))).not.toMatch(/NaN|undefined|Infinity/)
  })
  it.each([
    ['a front axle ahead of the ball', 'trailer.ballToAxleM'], ['a stem behind its transom', 'loading.stemAftOfBallM'], ['a boat’s centre behind its transom', 'loading.boatCentreAftOfStemM'],
    ['a tank behind the transom', 'loading.tanks.0.aftOfStemM'], ['more in a tank than it holds', 'loading.tanks.0.fill'], ['share and volume that disagree', 'loading.tanks.0.fill'],
  ])('with %s the balance waits for %s', (what, field) => {
    const change = wrong.find(([named]) => named === what)?.[1]
    expect(change && sums(without(wholeRig(), change)).balance.waitsFor).toContain(field)
  })
  it('the numbers that do not need the faulty field stay', () => {
    const all = sums(without(wholeRig(), (copy) => { copy.trailer.ballToAxleM = 0.3 }))
    expect(all.load.total.massKg).toBeCloseTo(sums(wholeRig()).load.total.massKg ?? Number.NaN, 9)
  })
  it('several faults are each named, and each taken out', () => {
    const all = sums(without(wholeRig(), (copy) => {
      copy.trailer.ballToAxleM = 0.3
      copy.weighings = [{ method: 'each axle', date: '2026-05-01', axles: [{ leftKg: 300 }, { massKg: 700 }] }, { method: 'tongue and axles', date: '2026-04-01', couplingKg: 180, axlesKg: 1500 }]
      copy.brakeTest = { date: '2026-05-01', axles: [{ leftN: 900 }, { leftN: 900, rightN: 900 }], actuatorTravelM: 0.02 }
    }))
    expect(all.faults.map(({ field }) => field)).toEqual(['trailer.ballToAxleM', 'weighings.0.axles.0.rightKg', 'brakeTest.axles.0.rightN'])
    expect(all.balance.weighed.map(({ method }) => method)).toEqual(['tongue and axles'])
    expect([all.balance.lever, all.brakes.deceleration, all.brakes.actuator?.travelM]).toEqual([undefined, undefined, 0.02])
  })
})

/** A rig as it stands in a file, with one value put wrong. */
const fileWith = (path: string, value: unknown): unknown => {
  const rig: unknown = JSON.parse(JSON.stringify({
    ...wholeRig(), boat: { ...wholeRig().boat, engineMassKg: 90 },
    couplingRatings: { couplerRatingKg: 2000, ballRatingKg: 2000, hitchRatingKg: 2000, towVehicleRatingKg: 2000, couplerStaticKg: 200, ballStaticKg: 200, hitchStaticKg: 200, towVehicleStaticKg: 200, towVehicleMaximumKg: 2400, towVehicleAxlesKg: 1900 },
    weighings: [
      { method: 'pads', date: '2026-05-01', standKg: 170, standAftOfBallM: 0.4, leftKg: 800, rightKg: 790 }, { method: 'weighbridge', date: '2026-05-01', towAloneKg: 2100, towCoupledKg: 2300, trailerAxlesKg: 1500 },
      { method: 'nose raised', date: '2026-05-01', totalKg: 1750, couplingLevelKg: 180, couplingRaisedKg: 150, couplingHeightM: 0.4, raisedRad: 0.1 },
    ],
    brakeTest: { date: '2026-05-01', massKg: 1700 },
    tieDown: { straps: [{ position: 'bow', place: 'bow tie', route: 'direct', ratedN: 9000, fittingRatedN: 9000, anchorRatedN: 9000, breakingN: 20_000, angles: { downRad: 0.5, offRad: 0.2, leads: 'aft', side: 'left' } }] },
  }))
  const put = (at: unknown, [name = '', ...rest]: readonly string[]): unknown => {
    if (Array.isArray(at)) return at.map((each: unknown, index) => (String(index) === name ? put(each, rest) : each))
    const group = typeof at === 'object' && at !== null ? at : {}
    expect(Object.keys(group), path).toContain(name)
    return { ...group, [name]: rest.length === 0 ? value : put(Object.entries(group).find(([key]) => key === name)?.[1], rest) }
  }
  return put(rig, path.split('.'))
}
const refused = (path: string, value: unknown) => {
  const result = rigSchema.safeParse(fileWith(path, value))
  return { field: result.error?.issues[0]?.path.join('.'), sentence: result.success ? 'taken' : sayRefusal(en, refusalOfIssues(result.error.issues)) }
}

/** A scale may show nothing, but nothing has no mass. */
const masses = [
  'trailer.massKg', 'trailer.maximumMassKg', 'trailer.axleRatingKg', 'boat.dryMassKg', 'boat.engineMassKg', 'loading.gear.0.massKg', 'stance.axleGroupKg', 'couplingRatings.couplerRatingKg', 'couplingRatings.ballRatingKg',
  'couplingRatings.hitchRatingKg', 'couplingRatings.towVehicleRatingKg', 'couplingRatings.couplerStaticKg', 'couplingRatings.ballStaticKg', 'couplingRatings.hitchStaticKg', 'couplingRatings.towVehicleStaticKg',
  'couplingRatings.towVehicleMaximumKg', 'couplingRatings.towVehicleAxlesKg', 'weighings.1.towAloneKg', 'weighings.1.towCoupledKg', 'weighings.2.totalKg', 'brakeTest.massKg',
]
const shown = ['weighings.0.standKg', 'weighings.0.leftKg', 'weighings.0.rightKg', 'weighings.1.trailerAxlesKg', 'weighings.2.couplingLevelKg', 'weighings.2.couplingRaisedKg']
const forces = ['tieDown.straps.0.ratedN', 'tieDown.straps.0.fittingRatedN', 'tieDown.straps.0.anchorRatedN', 'tieDown.straps.0.breakingN']

describe('a value no rig can have is refused by its field before any sum is worked out', () => {
  it('a right file is taken', () => expect(refused('trailer.massKg', 450).sentence).toBe('taken'))
  it.each(masses.flatMap((path) => [0, -5].map((value) => [path, value] as const)))('%s of %i kg', (path, value) => {
    const { field, sentence } = refused(path, value)
    expect(field).toBe(path)
    expect(sentence).toContain(sayField(en, path))
    expect(sentence).not.toMatch(/[{}]|NaN/)
  })
  it.each([...shown.map((path) => [path, -1] as const), ...forces.flatMap((path) => [[path, 0], [path, -1]] as const)])('%s of %i', (path, value) => {
    expect(refused(path, value).field).toBe(path)
    expect(refused(path, value).sentence).toContain(sayField(en, path))
  })
  it.each([
    ['tieDown.straps.0.angles.downRad', 1.6], ['tieDown.straps.0.angles.downRad', -1.6], ['tieDown.straps.0.angles.offRad', 1.6], ['tieDown.straps.0.angles.offRad', -0.1], ['weighings.2.raisedRad', 1.6], ['weighings.2.raisedRad', -0.1],
  ])('%s of %d, an angle beyond 90 degrees or below none', (path, value) => {
    expect(refused(path, value).field).toBe(path)
    expect(refused(path, value).sentence).toMatch(/degrees|0/)
  })
  it.each([[49], [131], [101.5]])('a load index of %d', (value) => {
    expect(refused('trailer.tyre.loadIndex', value).field).toBe('trailer.tyre.loadIndex')
    expect(refused('trailer.tyre.loadIndex', value).sentence).toContain(sayField(en, 'trailer.tyre.loadIndex'))
  })
  it.each([[0], [-2]])('an axle %d m behind the ball', (value) => expect(refused('trailer.ballToAxleM', value).field).toBe('trailer.ballToAxleM'))
  it.each([[1.01], [-0.01]])('a tank filled to %d of what it holds', (value) => expect(refused('loading.tanks.0.fill', value).field).toBe('loading.tanks.0.fill'))
})
