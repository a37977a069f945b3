import { describe, expect, it } from 'vitest'
import type { Rig } from '../../../shared-logic/rig/rig'
import { faultsOf } from '../../../shared-logic/sums/check-input'
import { defaultSumsSettings } from '../../../shared-logic/sums/settings'
import { sumsOf } from '../../../shared-logic/sums/sums'
import { en } from '../../../shared-logic/words/en'
import { sayRefusal } from '../../../shared-logic/words/say-refusal'
import { wholeRig, without } from './a-rig'

const wrong: readonly [what: string, change: (copy: Rig) => void, code: string, field: string][] = [
  ['a front axle ahead of the ball', (copy) => { copy.trailer.ballToAxleM = 0.3 }, 'sums.axle-ahead-of-ball', 'trailer.ballToAxleM'],
  ['a stem behind its transom', (copy) => { copy.loading = { ...copy.loading, transomAftOfBallM: 1 } }, 'sums.stem-behind-transom', 'loading.stemAftOfBallM'],
  ['a boat’s centre behind its transom', (copy) => { copy.loading = { ...copy.loading, boatCentreAftOfStemM: 7 } }, 'sums.behind-the-transom', 'loading.boatCentreAftOfStemM'],
  ['a tank behind the transom', (copy) => { copy.loading = { ...copy.loading, tanks: [{ fill: 0.5, aftOfStemM: 6.5 }] } }, 'sums.behind-the-transom', 'loading.tanks.0.aftOfStemM'],
  ['more in a tank than it holds', (copy) => { copy.loading = { ...copy.loading, tanks: [{ contentsM3: 0.21, aftOfStemM: 4 }] } }, 'sums.tank-overfull', 'loading.tanks.0.contentsM3'],
  ['share and volume that disagree', (copy) => { copy.loading = { ...copy.loading, tanks: [{ fill: 0.9, contentsM3: 0.1, aftOfStemM: 4 }] } }, 'sums.tank-said-twice', 'loading.tanks.0.contentsM3'],
  ['contents of a tank that is not there', (copy) => { copy.loading = { ...copy.loading, tanks: [{ fill: 0 }, { fill: 0 }, { fill: 0.5 }] } }, 'sums.no-such-tank', 'loading.tanks.2'],
  ['a load index that does not exist', (copy) => { copy.trailer.tyre = { loadIndex: 131 } }, 'sums.no-such-load-index', 'trailer.tyre.loadIndex'],
  ['one side of an axle', (copy) => { copy.weighings = [{ method: 'each axle', date: '2026-05-01', axles: [{ leftKg: 300 }, { massKg: 700 }] }] }, 'sums.half-missing', 'weighings.0.axles.0.rightKg'],
  ['one axle of two', (copy) => { copy.weighings = [{ method: 'each axle', date: '2026-05-01', axles: [{ massKg: 700 }] }] }, 'sums.axles-do-not-match', 'weighings.0.axles'],
  ['a coupling heavier than the whole', (copy) => { copy.weighings = [{ method: 'nose raised', date: '2026-05-01', totalKg: 100, couplingLevelKg: 190, couplingRaisedKg: 90, couplingHeightM: 0.4, raisedRad: 0.1 }] }, 'sums.part-over-whole', 'weighings.0.totalKg'],
  ['travel longer than the stroke', (copy) => { copy.brakeTest = { date: '2026-05-01', actuatorTravelM: 0.1, actuatorStrokeM: 0.09 } }, 'sums.travel-over-stroke', 'brakeTest.actuatorTravelM'],
  ['one brake of an axle', (copy) => { copy.brakeTest = { date: '2026-05-01', axles: [{ leftN: 900 }] } }, 'sums.half-missing', 'brakeTest.axles.0.rightN'],
]

describe('input that cannot be right', () => {
  it('a right rig has no fault', () => expect(faultsOf(wholeRig())).toEqual([]))
  it.each(wrong)('%s is refused with its field named in a sentence', (_what, change, code, field) => {
    const [fault] = faultsOf(without(wholeRig(), change))
    expect(fault).toMatchObject({ code, field })
    expect(fault && sayRefusal(en, fault)).not.toMatch(/\{|sums\./)
  })
  it('no number rests on a faulty field: what needed it waits for it', () => {
    const axle = sumsOf(without(wholeRig(), (copy) => { copy.trailer.ballToAxleM = 0.3 }), 'us', defaultSumsSettings)
    expect([axle.balance.lever, axle.balance.tanks, axle.balance.goal]).toEqual([undefined, undefined, undefined])
    expect(axle.balance.waitsFor).toContain('trailer.ballToAxleM')
    const tank = sumsOf(without(wholeRig(), (copy) => { copy.loading = { ...copy.loading, tanks: [{ contentsM3: 0.3, aftOfStemM: 4 }, { fill: 0, aftOfStemM: 2 }] } }), 'us', defaultSumsSettings)
    expect(tank.load.total.massKg).toBeUndefined()
    const forces = sumsOf(without(wholeRig(), (copy) => { copy.brakeTest = { date: '2026-05-01', axles: [{ leftN: 900 }, { leftN: 900, rightN: 900 }] } }), 'us', defaultSumsSettings)
    expect(forces.brakes.deceleration).toBeUndefined()
    const weighing = sumsOf(without(wholeRig(), (copy) => { copy.weighings = [{ method: 'each axle', date: '2026-05-01', axles: [{ leftKg: 300 }, { massKg: 700 }], couplingKg: 100 }] }), 'us', defaultSumsSettings)
    expect(weighing.balance.weighed).toEqual([])
  })
})
