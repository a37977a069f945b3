import { describe, expect, it } from 'vitest'
import type { LimitId } from '../../../shared-logic/load/limits'
import type { Rig } from '../../../shared-logic/rig/rig'
import { defaultSumsSettings } from '../../../shared-logic/sums/settings'
import { sumsOf, type Sums } from '../../../shared-logic/sums/sums'
import { en } from '../../../shared-logic/words/en'
import { saySums } from '../../../shared-logic/words/sums'
import { wholeRig, without } from './a-rig'

const sums = (rig: Rig): Sums => sumsOf(rig, 'us', defaultSumsSettings)
const lineOf = ({ load }: Sums, id: LimitId) => load.lines.find(({ limit }) => limit.id === id)
const independent = (stance: Rig['stance']): Sums => sums(without(wholeRig(), (copy) => { copy.trailer.suspension = 'torsion arms'; copy.stance = stance }))
const sentences = (rig: Rig): string => saySums(en, sums(rig), 'metric', '2026-11-25').flatMap(({ lines }) => lines.map(({ text }) => text)).join('\n')

describe('a load sheet of a whole rig', () => {
  it('holds every limit against its own load: plate by the total, axles and tyres by what rests on them, coupler by the coupling load', () => {
    const all = sums(wholeRig())
    const { lever } = all.balance
    expect(lineOf(all, 'maximum mass')?.load?.massKg).toBeCloseTo(lever?.totalKg ?? 0, 9)
    expect(lineOf(all, 'axles together')?.load?.massKg).toBeCloseTo(lever?.axleKg ?? 0, 9)
    expect(lineOf(all, 'one axle')?.load?.massKg).toBeCloseTo((lever?.axleKg ?? 0) / 2, 9)
    expect(lineOf(all, 'one tyre')?.load?.massKg).toBeCloseTo((lever?.axleKg ?? 0) / 4, 9)
    expect(lineOf(all, 'coupler, coupling load')?.load?.massKg).toBeCloseTo(lever?.couplingKg ?? 0, 9)
  })
  it('says it when the tyres carry less than the plate', () => {
    const rig = without(wholeRig(), (copy) => { copy.trailer.maximumMassKg = 3100; copy.trailer.axleRatingKg = 1600; copy.trailer.coupler = 'class 4'; copy.trailer.tyre = { loadIndex: 97 } })
    expect(sums(rig).load.narrowest).toEqual({ id: 'tyres together', ratingKg: 2920, underPlateKg: 180 })
    expect(sentences(rig)).toContain('Tyres carry 2,920 kg: 180 kg less than the plate says.')
  })
  it('holds axle and tyre against the wheel scales where each wheel was weighed: the heavier side counts, not half of what was reckoned', () => {
    const rig = without(wholeRig(), (copy) => { copy.weighings = [{ method: 'each axle', date: '2026-11-01', axles: [{ leftKg: 860, rightKg: 300 }, { leftKg: 240, rightKg: 250 }] }] })
    const all = sums(rig)
    expect(lineOf(all, 'one axle')).toMatchObject({ load: { massKg: 1160 }, standing: 'over' })
    expect(lineOf(all, 'one tyre')).toMatchObject({ load: { massKg: 860 }, reserveKg: -35, standing: 'over' })
    expect(all.load.governing).toBe('one axle')
  })
  it('names the limit with the least reserve, whatever it is of', () => {
    expect(sums(wholeRig()).load.governing).toBe('maximum mass')
    expect(sums(without(wholeRig(), (copy) => { copy.couplingRatings = { couplerStaticKg: 100 } })).load.governing).toBe('coupler, coupling load')
  })
})

describe('what is not known', () => {
  it('an empty rig gives no number, and every part says what it waits for', () => {
    const all = sums({ name: 'Bare', trailer: {} })
    expect(all.load.total.massKg).toBeUndefined()
    expect(all.load.total.waitsFor).toEqual(['trailer.massKg'])
    expect(all.balance.lever).toBeUndefined()
    expect(all.balance.waitsFor).toEqual(expect.arrayContaining(['trailer.ballToAxleM', 'trailer.massKg', 'loading.trailerCentreAftOfBallM']))
    expect(all.load.lines.every(({ standing }) => standing === 'waits')).toBe(true)
    expect(all.brakes.waitsFor).toEqual(['trailer.maximumMassKg', 'trailer.brakes'])
    expect(all.coupling.dValue.standing).toBe('waits')
    expect(sentences({ name: 'Bare', trailer: {} })).toContain('Waits for: Unladen mass')
  })
  it('a tank of unknown level gives bounds, and a verdict only where both ends agree', () => {
    const rig = without(wholeRig(), (copy) => { copy.loading = { ...copy.loading, tanks: [{ aftOfStemM: 4 }, { fill: 0, aftOfStemM: 2 }] } })
    const all = sums(rig)
    expect(all.balance.lever).toBeUndefined()
    expect(all.balance.bounds?.least.couplingKg).toBeLessThan(all.balance.bounds?.most.couplingKg ?? 0)
    expect(all.balance).toMatchObject({ standing: 'within', standingFrom: 'bounds' })
    expect(all.load.total).toMatchObject({ lowKg: 1610, waitsFor: ['loading.tanks.0.fill'] })
    expect(all.load.total.highKg).toBeCloseTo(1610 + 0.2 * 0.95 * 775, 6)
    expect(lineOf(all, 'maximum mass')?.standing).toBe('waits')
    expect(lineOf(all, 'chains')?.standing).toBe('within')
    expect(sentences(rig)).toContain('Share of the tank filled (1)')
  })
  it('a missing mass still shows a limit that is over already', () => {
    const all = sums(without(wholeRig(), (copy) => { copy.trailer.massKg = undefined; copy.trailer.maximumMassKg = 1000 }))
    expect(lineOf(all, 'maximum mass')).toMatchObject({ standing: 'over' })
    expect(lineOf(all, 'maximum mass')?.reserveKg).toBeUndefined()
  })
  it('without a sum the newest weighing stands in, and says so', () => {
    const rig = without(wholeRig(), (copy) => {
      copy.boat = { ...copy.boat, dryMassKg: undefined }
      copy.weighings = [
        { method: 'tongue and axles', date: '2025-05-01', couplingKg: 300, axlesKg: 1700 },
        { method: 'weighbridge', date: '2026-05-01', towAloneKg: 2140, towCoupledKg: 2322, trailerAxlesKg: 1568 },
      ]
    })
    const all = sums(rig)
    expect(all.load.basis).toBe('weighed')
    expect(lineOf(all, 'maximum mass')?.load?.massKg).toBe(1750)
    expect(all.balance).toMatchObject({ standing: 'within', standingFrom: 'weighed' })
  })
})

describe('scales and sums that do not agree', () => {
  const weighedAt = (couplingKg: number, axlesKg: number, change: (copy: Rig) => void = () => undefined): Rig =>
    without(wholeRig(), (copy) => { copy.weighings = [{ method: 'tongue and axles', date: '2026-05-01', couplingKg, axlesKg }]; change(copy) })
  const linesOf = (rig: Rig) => saySums(en, sums(rig), 'metric', '2026-11-25').flatMap(({ lines }) => lines)
  const tail = (copy: Rig): void => { copy.trailer.ballToAxleM = 4.5 }

  it('a coupling load reckoned too light fails by itself, and is advice where the scales found it good', () => {
    expect(sums(without(wholeRig(), tail)).balance).toMatchObject({ standing: 'too light', verdict: 'fail' })
    const all = sums(weighedAt(175, 1575, tail))
    expect(all.balance).toMatchObject({ standing: 'too light', standingFrom: 'reckoned', verdict: 'advisory', scales: { date: '2026-05-01', standing: 'within', verdict: 'pass' } })
    expect(linesOf(weighedAt(175, 1575, tail)).filter(({ verdict }) => verdict === 'fail')).toEqual([])
  })
  it('a coupling that the scales found lifted fails, whatever was reckoned', () => {
    const rig = without(wholeRig(), (copy) => { copy.weighings = [{ method: 'weighbridge', date: '2026-05-01', towAloneKg: 2400, towCoupledKg: 2360, trailerAxlesKg: 1700 }] })
    expect(sums(rig).balance).toMatchObject({ standing: 'within', verdict: 'pass', scales: { standing: 'lifts', verdict: 'fail' } })
    expect(linesOf(rig).find(({ text }) => text.startsWith('As weighed 1 May 2026: ') && text.endsWith('Scales decide over what was added up.'))?.verdict).toBe('fail')
  })
  it('a plate that the scales found exceeded fails, though what was added up keeps within it', () => {
    const all = sums(weighedAt(200, 1900))
    expect(lineOf(all, 'maximum mass')).toMatchObject({ verdict: 'pass', standing: 'within' })
    expect(all.load.byScales?.lines.find(({ limit }) => limit.id === 'maximum mass')).toMatchObject({ load: { massKg: 2100 }, standing: 'over', verdict: 'fail' })
    expect(linesOf(weighedAt(200, 1900)).find(({ text }) => text.startsWith('As weighed 1 May 2026: Rating plate: carries 2,040 kg, 2,100 kg on it'))?.verdict).toBe('fail')
  })
  it('a plate exceeded by what was added up is advice where the scales found it within, and fails where they agree', () => {
    const plate = (copy: Rig): void => { copy.trailer.maximumMassKg = 1650 }
    expect(lineOf(sums(weighedAt(150, 1250, plate)), 'maximum mass')).toMatchObject({ standing: 'over', verdict: 'advisory' })
    expect(lineOf(sums(weighedAt(200, 1600, plate)), 'maximum mass')).toMatchObject({ standing: 'over', verdict: 'fail' })
  })
  it('scales under which every limit holds say so in one line', () => {
    expect(linesOf(weighedAt(120, 1180)).filter(({ text }) => text === 'As weighed 1 May 2026, every limit that is known holds with the reserve wanted.')).toHaveLength(1)
  })
})

describe('axles that spring by themselves', () => {
  it('have to be weighed: without spring data nothing is split, and it says what is missing', () => {
    const { axleLoads } = independent({ axleSpacingM: 0.86 }).balance
    expect(axleLoads).toMatchObject({ sharing: 'independent', mustBeWeighed: true, waitsFor: ['stance.ballHeightM', 'stance.levelBallHeightM', 'stance.axleRateKgPerM'] })
    expect(axleLoads?.axlesKg).toBeUndefined()
  })
  it('towed nose-high load the rear axle, and still have to be weighed', () => {
    const { axleLoads } = independent({ axleSpacingM: 0.86, ballHeightM: 0.5, levelBallHeightM: 0.45, axleRateKgPerM: 15_000 }).balance
    const [front = 0, rear = 0] = axleLoads?.axlesKg ?? []
    expect(rear).toBeGreaterThan(front)
    expect(axleLoads?.mustBeWeighed).toBe(true)
  })
  it('leaf springs alone do not tell whether a beam shares the load', () => {
    expect(sums(without(wholeRig(), (copy) => { copy.stance = { axleSpacingM: 0.86 } })).balance.axleLoads).toMatchObject({ sharing: 'not known', mustBeWeighed: true, waitsFor: ['stance.loadSharing'] })
  })
})

describe('tyres, coupling and brakes', () => {
  it('each tyre is judged at its own weighed load', () => {
    const { tyres } = sums(without(wholeRig(), (copy) => { copy.weighings = [{ method: 'each axle', date: '2026-05-01', axles: [{ leftKg: 380, rightKg: 420 }, { leftKg: 900, rightKg: 410 }] }] }))
    expect(tyres.loads.map(({ loadKg, from }) => [loadKg, from])).toEqual([[380, 'weighed'], [420, 'weighed'], [900, 'weighed'], [410, 'weighed']])
    expect(tyres.loads.map(({ line }) => line.standing)).toEqual(['within', 'within', 'over', 'within'])
    expect(tyres.loads[2]?.pressure.kind).toBe('beyond')
  })
  it('a class 2 coupler is too small for 2,040 kg', () => {
    expect(sums(without(wholeRig(), (copy) => { copy.trailer.coupler = 'class 2' })).coupling.couplerClass).toMatchObject({ needed: 'class 3', standing: 'too small' })
  })
  it('two chains may hold together what one does not hold', () => {
    expect(sums(wholeRig()).coupling.chains.standing).toEqual({ eachEnough: false, togetherEnough: true })
  })
  it('brakes on one axle of two meet California and not the District of Columbia', () => {
    const { needs } = sums(without(wholeRig(), (copy) => { copy.trailer.brakedAxleCount = 1 })).brakes
    expect(needs.map(({ place, standing }) => [place, standing])).toEqual([['federal benchmark', 'not met'], ['California', 'met'], ['District of Columbia', 'not met']])
  })
  it('brake forces of 8,000 N slow 1,684.75 kg at 48 % of gravity', () => {
    const { brakes } = sums(without(wholeRig(), (copy) => { copy.brakeTest = { date: '2026-05-02', axles: [{ leftN: 2000, rightN: 2000 }, { leftN: 2200, rightN: 1800 }], actuatorTravelM: 0.07, actuatorStrokeM: 0.09 } }))
    expect(brakes.deceleration?.share).toBeCloseTo(8000 / (1684.75 * 9.80665), 9)
    expect(brakes.actuator).toMatchObject({ standing: 'spent' })
    expect(brakes.imbalance[1]?.share).toBeCloseTo(400 / 2200, 9)
  })
})

describe('weighed against reckoned', () => {
  it('names the mass that would explain the difference, and where it would lie', () => {
    const rig = wholeRig()
    const { lever } = sums(rig).balance
    if (!lever) throw new Error('the rig is whole')
    // 80 kg of water in the bilge, 6 m behind the ball.
    const axlesKg = lever.axleKg + (80 * 6) / 5
    const { comparison } = sums({ ...rig, weighings: [{ method: 'tongue and axles', date: '2026-05-01', couplingKg: lever.totalKg + 80 - axlesKg, axlesKg }] }).balance
    expect(comparison?.asIf?.massKg).toBeCloseTo(80, 6)
    expect(comparison?.asIf?.atM).toBeCloseTo(6, 6)
    expect(comparison?.meanings).toContain('heavier than reckoned')
  })
})

describe('every sentence', () => {
  it.each([['a whole rig', wholeRig()], ['a bare one', { name: 'Bare', trailer: {} }]])('of %s has its gaps filled, in both units and rule books', (_what, rig) => {
    for (const ruleBook of ['us', 'eu'] as const)
      for (const units of ['us', 'metric'] as const)
        expect(JSON.stringify(saySums(en, sumsOf(rig, ruleBook, defaultSumsSettings), units, '2026-11-25'))).not.toMatch(/\{\w+\}|undefined|NaN|Infinity/)
  })
})
