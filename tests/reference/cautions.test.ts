import { describe, expect, it } from 'vitest'
import { cautionsThatApply, type CautionFacts } from '../../shared-logic/report/cautions'
import { sampleSurvey } from '../main/report/sample-survey'

/** Only cautions of the trailer's sums and papers are looked at; what a frame's survey adds of corrosion has tests of its own. */
const facts = (rig: CautionFacts['rig'], stations: readonly string[], more: Partial<CautionFacts> = {}): CautionFacts => ({
  rig, survey: { ...sampleSurvey(), photographs: [] }, asked: (station) => stations.includes(station), balanceSpokenOf: true, tieDownPrinted: false, dangerous: false, spotsRecorded: false, thicknessRead: false, ...more,
})
const plain = ['this day and place', 'limits quoted', 'outside the report', 'not a certificate']
const sorted = (given: CautionFacts): string[] => cautionsThatApply(given).map(({ id }) => id).toSorted()

// All but the scope of the rules: common practice, no source.
describe('cautions of a report', () => {
  it('on one axle, no plate, the boat’s mass estimated, no road test, no straps seen', () => {
    const given = facts({ name: 'One', trailer: { massKg: 500, axleCount: 1 }, boat: { dryMassKg: 900 } }, ['papers', 'wheels', 'brakes'])
    expect(sorted(given)).toEqual([...plain, 'masses', 'plate missing', 'balance changes', 'tyre age', 'brakes at rest', 'numbers prove little'].toSorted())
    expect(cautionsThatApply(given).filter(({ strong }) => strong).map(({ id }) => id)).toEqual(['plate missing'])
  })
  it('on a tandem of torsion arms, plate and roller test there, straps seen, one wheel cracked', () => {
    const trailer = { maximumMassKg: 2000, axleCount: 2, suspension: 'torsion arms' } as const
    const given = facts({ name: 'Two', trailer, brakeTest: { date: '2025-06-01', axles: [{ leftN: 1000, rightN: 1000 }] } }, ['papers', 'wheels', 'brakes', 'tie-down'], { dangerous: true })
    // 'masses' stands there because the plate's own mass is printed; it asks for nothing that was weighed to be doubted.
    expect(sorted(given)).toEqual([...plain, 'masses', 'plate decides', 'balance changes', 'straps', 'tyre age', 'numbers prove little', 'do not tow', 'each axle weighed'].toSorted())
  })
  it('speak of brakes judged at rest until forces were measured on rollers or plates', () => {
    const tested = (brakeTest: CautionFacts['rig']['brakeTest']) => sorted(facts({ name: 'Brakes', trailer: {}, ...(brakeTest && { brakeTest }) }, ['brakes'])).includes('brakes at rest')
    expect([tested(undefined), tested({ date: '2025-06-01', actuatorTravelM: 0.02 }), tested({ date: '2025-06-01', axles: [{ leftN: 900, rightN: 900 }] })]).toEqual([true, true, false])
  })
})
