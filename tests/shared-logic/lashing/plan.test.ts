import { describe, expect, it } from 'vitest'
import { workedOut } from '../../../shared-logic/checks/worked-out'
import type { TieDownAdvice } from '../../../shared-logic/lashing/advise'
import { tieDownPlanOf } from '../../../shared-logic/lashing/plan'
import type { Rig } from '../../../shared-logic/rig/rig'
import { strapSchema, tieDownSchema, type Strap } from '../../../shared-logic/rig/tie-down'
import { en } from '../../../shared-logic/words/en'
import { sayTieDown } from '../../../shared-logic/words/sums/tie-down'

const at = (aftOfBallM: number, toRightM: number, heightM: number) => ({ aftOfBallM, toRightM, heightM })
const strap = (place: Strap['place'], boat: Strap['boat'], trailer: Strap['trailer'], more: Partial<Strap> = {}): Strap => ({ position: place, place, route: 'direct', ratedN: 10_000, boat, trailer, ...more })

const bowTie = strap('bow tie', at(1.6, 0, 1.1), at(2.4, 0, 0.5))
const winch = strap('winch', at(1.6, 0, 1.1), at(1.2, 0, 1.1))
const left = strap('transom', at(6.6, -0.8, 1), at(5.9, -0.7, 0.5))
const right = strap('transom', at(6.6, 0.8, 1), at(5.9, 0.7, 0.5))
const set = [bowTie, winch, left, right]
const rigOf = (straps: readonly Strap[], more: Partial<Rig> = {}, tieDown: Partial<NonNullable<Rig['tieDown']>> = {}): Rig => ({
  name: 'invented', trailer: { supports: 'bunks' }, boat: { dryMassKg: 900, lengthM: 5.5, beamM: 2.1 }, tieDown: { straps: [...straps], ...tieDown }, ...more,
})
const adviceFor = (straps: readonly Strap[]): TieDownAdvice[] => tieDownPlanOf(rigOf(straps), 'eu').advisories.map(({ id }) => id)
const forwardOf = (rig: Rig) => tieDownPlanOf(rig, 'eu').methods[0]?.directions[0]

describe('how straps are set', () => {
  it('has nothing to say about a bow tie down and aft, a winch strap forward and two transom straps down and forward', () => expect(adviceFor(set)).toEqual([]))
  it.each<[string, Strap[], TieDownAdvice]>([
    ['a transom strap leading aft', [bowTie, winch, { ...left, trailer: at(7, -0.7, 0.5) }, right], 'transom strap pulls aft'],
    ['a transom strap straight down', [bowTie, winch, { ...left, trailer: at(6.6, -0.8, 0.5) }, right], 'transom strap pulls aft'],
    ['a level transom strap', [bowTie, winch, { ...left, trailer: at(5.9, -0.7, 1) }, right], 'transom strap does not pull down'],
    ['a transom strap leading up', [bowTie, winch, { ...left, trailer: at(5.9, -0.7, 1.3) }, right], 'pulls up'],
    ['a bow tie leading forward', [{ ...bowTie, trailer: at(1.1, 0, 0.5) }, winch, left, right], 'bow tie pulls forward'],
    ['a winch strap leading aft', [bowTie, { ...winch, trailer: at(2, 0, 1.1) }, left, right], 'winch strap does not pull forward'],
    ['a transom strap to the other side', [bowTie, winch, { ...left, trailer: at(5.9, 0.7, 0.5) }, right], 'crosses under the hull'],
    ['a strap from inside the beam to outside it', [...set, strap('amidships', at(4, 0.6, 1.2), at(4, 1.2, 0.6))], 'crosses the hull edge'],
    ['a strap over the top', [...set, strap('amidships', at(4, 1, 1.2), at(4, 1.1, 0.6), { route: 'over the top' })], 'crosses the hull edge'],
    ['a bow tie at more than 60 degrees', [{ ...bowTie, trailer: at(1.7, 0, 0.5) }, winch, left, right], 'steep'],
    ['a strap without a rating', [bowTie, winch, left, { ...right, ratedN: undefined }], 'no rating'],
    ['a bow held by its winch strap alone', [winch, left, right], 'no second bow tie'],
    ['a transom strap on the right only', [bowTie, winch, right], 'no transom strap left'],
  ])('%s is named', (_, straps, id) => {
    expect(adviceFor(straps)).toContain(id)
    expect(en.tieDownPlan.advice[id]).not.toBe('')
  })
})

describe('what is not known', () => {
  it('works out no force without a boat’s mass, and says which number it waits for', () => {
    const plan = tieDownPlanOf(rigOf(set, { boat: { lengthM: 5.5 } }), 'eu')
    expect(plan.methods).toEqual([])
    expect(plan.standing).toBe('waits')
    expect(plan.waitsFor).toEqual(['boat.dryMassKg'])
  })
  it('counts a tank of unknown fill as full, and does not call short what an empty one would let hold', () => {
    const boat = { dryMassKg: 500, lengthM: 5.5, tanks: [{ contents: 'petrol' as const, capacityM3: 2 }] }
    const plan = tieDownPlanOf(rigOf([{ ...bowTie, ratedN: 5_000 }, left, right], { boat }), 'eu')
    expect(plan.reckoned?.basis).toBe('at most')
    expect(plan.methods[0]?.directions[0]?.standing).toBe('waits')
    expect(plan.waitsFor).toContain('loading.tanks.0.fill')
  })
  it('calls short what falls short of the parts that are known already', () => {
    const plan = tieDownPlanOf(rigOf([{ ...bowTie, ratedN: 500 }, left, right], { boat: { engineMassKg: 400, lengthM: 5.5 } }), 'eu')
    expect(plan.reckoned).toEqual({ massKg: 400, basis: 'at least' })
    expect(plan.methods[0]?.directions[0]?.standing).toBe('short')
    expect(plan.methods[0]?.directions[1]?.standing).toBe('waits')
  })
  it('waits for a rating that could tip it, and not for one that could not', () => {
    expect(forwardOf(rigOf([{ ...bowTie, ratedN: undefined }, left, right]))?.standing).toBe('waits')
    expect(forwardOf(rigOf([{ ...bowTie, ratedN: 100 }, left, { ...right, ratedN: undefined }]))?.standing).toBe('short')
  })
  it('never counts a winch strap without its own rating', () => {
    const without = tieDownPlanOf(rigOf([{ ...winch, ratedN: undefined }], {}, { winchStrapCounts: true }), 'us')
    expect(without.aggregate?.countedN).toBe(0)
    expect(without.waitsFor).toContain('tieDown.straps.0.ratedN')
    expect(tieDownPlanOf(rigOf([winch], {}, { winchStrapCounts: true }), 'us').aggregate?.countedN).toBe(5_000)
  })
  it('waits for everything on a rig without a plan, and still tells what is needed', () => {
    const plan = tieDownPlanOf({ name: 'invented', trailer: {}, boat: { dryMassKg: 900 } }, 'eu')
    expect(plan.standing).toBe('waits')
    expect(plan.methods[0]?.directions[0]?.neededN).toBeCloseTo(0.8 * 900 * 9.80665, 6)
  })
  it('counts gear in the boat, and not gear lying on the trailer', () => {
    const gear = [{ name: 'anchor', massKg: 20, aftOfStemM: 0.5 }, { name: 'spare wheel', massKg: 30, aftOfBallM: 0.6 }, { name: 'bags', massKg: 15 }]
    expect(tieDownPlanOf(rigOf(set, { loading: { gear } }), 'eu').boat.mass.massKg).toBe(935)
  })
})

describe('the bow stop', () => {
  const weak = [{ ...bowTie, ratedN: 1_000 }, left, right]
  it('leaves to the stop what straps and friction do not hold, and says how much', () => {
    const hold = forwardOf(rigOf(weak, {}, { bowStopBlocks: true }))
    expect(hold?.standing).toBe('rests on the bow stop')
    expect(hold?.stopMustBearN).toBeCloseTo((hold?.neededN ?? 0) - (hold?.strapsN ?? 0) - (hold?.frictionN ?? 0), 9)
  })
  it.each([[10_000, 'holds'], [100, 'short']] as const)('of %i N: %s', (bowStopRatedN, standing) => {
    expect(forwardOf(rigOf(weak, {}, { bowStopBlocks: true, bowStopRatedN }))?.standing).toBe(standing)
  })
  it('that does not block holds nothing', () => expect(forwardOf(rigOf(weak, {}, { bowStopBlocks: false, bowStopRatedN: 10_000 }))?.standing).toBe('short'))
})

// Common practice, no source: winch and strap are for loading; to leave the strap out is the stricter reading of 49 CFR 393.106(d) and 393.110.
describe('the winch strap', () => {
  const said = (rig: Rig): string[] => sayTieDown(en, tieDownPlanOf(rig, 'us'), 'metric').lines.map(({ text }) => text)

  it('is left out of aggregate and number, and the sentences say so', () => {
    const plan = tieDownPlanOf(rigOf(set), 'us')
    expect([plan.winchLeftOut, plan.count?.fitted, plan.aggregate?.countedN]).toEqual([true, 3, 15_000])
    expect(said(rigOf(set))).toEqual(expect.arrayContaining([
      expect.stringMatching(/^Aggregate working load limit without the winch strap 15[,.]\d+ k?N; at least/),
      expect.stringMatching(/^3 straps fitted without the winch strap; at least 3/), en.tieDownPlan.winchLeftOut,
    ]))
  })
  it('makes the plan short where it stood in for a strap that is missing', () => {
    expect(tieDownPlanOf(rigOf([winch, left, right]), 'us')).toMatchObject({ standing: 'short', count: { fitted: 2, least: 3, standing: 'short' } })
  })
  it('counts half its rating, as a direct tiedown, on a rig that says so', () => {
    const plan = tieDownPlanOf(rigOf(set, {}, { winchStrapCounts: true }), 'us')
    expect([plan.winchLeftOut, plan.count?.fitted, plan.aggregate?.countedN]).toEqual([false, 4, 20_000])
    expect(said(rigOf(set, {}, { winchStrapCounts: true })).join()).not.toContain('without the winch strap')
  })
  it.each([true, false])('is not spoken of on a rig without one (counted: %s)', (winchStrapCounts) => {
    expect(said(rigOf([bowTie, left, right], {}, { winchStrapCounts })).join()).not.toContain('inch strap')
  })
  it('holds against rolling back among the forces, and the sentence says how much of it', () => {
    const rearward = tieDownPlanOf(rigOf(set), 'us').methods[0]?.directions.find(({ direction }) => direction === 'rearward')
    // Level, straight forward, each strap by its own limit: all of its 10,000 N.
    expect(rearward?.byWinchN).toBeCloseTo(10_000, 6)
    expect(said(rigOf(set)).find((text) => text.startsWith('A pull rearward'))).toMatch(/; \S+ k?N of it by the winch strap\.$/)
    expect(tieDownPlanOf(rigOf(set), 'us').methods[0]?.directions.find(({ direction }) => direction === 'forward')?.byWinchN).toBeUndefined()
  })
  it('is not to be bought stronger for an aggregate it does not count in', () => {
    const weak = set.map((one) => ({ ...one, ratedN: 100 }))
    const neededFor = (winchStrapCounts: boolean) => tieDownPlanOf(rigOf(weak, {}, { winchStrapCounts, friction: 0.6 }), 'us').toBuy.find(({ index }) => index === 1)?.neededN
    expect(neededFor(true)).toBeGreaterThan(neededFor(false) ?? 0)
  })
  it('is one rule for plan and checks: what the checks work out is what the plan counts', () => {
    for (const winchStrapCounts of [true, false]) {
      const rig = rigOf(set, {}, { winchStrapCounts })
      const { plan, planWithoutWinch } = workedOut({ rig, ruleBook: 'us' })
      expect([planWithoutWinch.aggregate, planWithoutWinch.count]).toEqual([{ ...plan.aggregate, straps: planWithoutWinch.aggregate?.straps }, plan.count])
      expect(planWithoutWinch.straps).toHaveLength(plan.count?.fitted ?? 0)
    }
  })
})

describe('what is not held', () => {
  const open: Rig = { name: 'invented', trailer: {}, boat: { dryMassKg: 900, lengthM: 5.5 }, tieDown: { straps: [] } }
  const said = (rig: Rig): string[] => sayTieDown(en, tieDownPlanOf(rig, 'eu'), 'metric').lines.map(({ text }) => text)
  it('names the weakest direction, the direction no strap holds, and how many straps of what rating would do', () => {
    const texts = said(open)
    expect(texts).toContain('No strap fitted holds the boat forward.')
    expect(texts.filter((text) => text.startsWith('Weakest direction. A pull '))).toHaveLength(1)
    const [forward] = tieDownPlanOf(open, 'eu').methods[0]?.wouldDo.forward ?? []
    expect(forward).toBeDefined()
    expect(texts.find((text) => text.startsWith('By themselves these would hold the boat forward: 1 from the bow eye'))).toMatch(/rated [\d,.]+ k?N: each pulls [\d,.]+ k?N\.$/)
  })
  it('says what falls to the bow stop', () => {
    expect(said(rigOf([{ ...bowTie, ratedN: 1_000 }, left, right], {}, { bowStopBlocks: true }))).toContainEqual(expect.stringMatching(/^Bow stop and winch post must bear at least [\d,.]+ k?N/))
  })
})

describe('the plan as a whole', () => {
  it('names the direction with the least share held', () => {
    const plan = tieDownPlanOf(rigOf(set), 'eu')
    expect(plan.weakest?.direction).toMatch(/left|right/)
    expect(plan.standing).toBe('short')
  })
  it('in the United States stands by aggregate and number, whatever the force sums say', () => {
    const plan = tieDownPlanOf(rigOf(set), 'us')
    expect([plan.aggregate?.standing, plan.count?.standing, plan.standing]).toEqual(['holds', 'holds', 'holds'])
    expect(plan.methods.map(({ method }) => method.id)).toEqual(['us working', 'us breaking'])
  })
  it('waits for the breaking strength where only working limits are marked', () => {
    const [, breaking] = tieDownPlanOf(rigOf(set), 'us').methods
    expect(breaking?.directions[0]?.standing).toBe('waits')
  })
  it('does not buy a transom strap to hold the boat sideways', () => {
    const plan = tieDownPlanOf(rigOf(set), 'eu')
    const rearward = plan.methods[0]?.directions.find(({ direction }) => direction === 'rearward')
    expect(plan.toBuy.find(({ index }) => index === 2)?.neededN).toBeCloseTo(rearward?.ratingEachN ?? 0, 9)
  })
  it('names a rating sold for each strap to be bought', () => {
    const { toBuy } = tieDownPlanOf(rigOf(set.map((one) => ({ ...one, ratedN: undefined }))), 'eu')
    expect(toBuy.map(({ index }) => index)).toEqual([0, 1, 2, 3])
    expect(toBuy.every(({ neededN, ratedN }) => ratedN !== undefined && ratedN >= neededN)).toBe(true)
  })
})

describe('bad input', () => {
  it('is refused where an angle is over 90 degrees', () => {
    const result = strapSchema.safeParse({ ...bowTie, angles: { downRad: 1.6, offRad: 0, leads: 'aft', side: 'left' } })
    expect(result.error?.issues[0]).toMatchObject({ path: ['angles', 'downRad'], message: 'at most 90 degrees' })
  })
  it('is refused where both ends are the same point', () => expect(strapSchema.safeParse({ ...bowTie, trailer: bowTie.boat }).error?.issues[0]?.path).toEqual(['trailer']))
  it.each([{ ratedN: 0 }, { ratedN: -5 }, { tensionN: Number.NaN }, { route: 'sideways' }])('is refused: %j', (bad) => expect(strapSchema.safeParse({ ...bowTie, ...bad }).success).toBe(false))
  it('is refused for a friction above 1', () => expect(tieDownSchema.safeParse({ straps: [], friction: 1.2 }).success).toBe(false))
})
