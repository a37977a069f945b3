import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { leadOf } from '../../../shared-logic/lashing/geometry'
import { tieDownPlanOf } from '../../../shared-logic/lashing/plan'
import type { DirectionHold } from '../../../shared-logic/lashing/direction-hold'
import type { Rig } from '../../../shared-logic/rig/rig'
import type { Strap } from '../../../shared-logic/rig/tie-down'
import { ruleBooks, type RuleBook } from '../../../shared-logic/rules/rule-book'
import { evenly } from '../evenly'
import { anyRig, anyStrap } from './random-plans'

const near = (a: number, b: number, scale = Math.max(Math.abs(a), Math.abs(b))): boolean => Math.abs(a - b) <= 1e-9 * Math.max(1, scale)
const holds = (rig: Rig, ruleBook: RuleBook): DirectionHold[] => tieDownPlanOf(rig, ruleBook).methods.flatMap(({ directions }) => [...directions])
const books = fc.constantFrom(...ruleBooks)
const mirrored = (strap: Strap): Strap => ({
  ...strap,
  ...(strap.boat && { boat: { ...strap.boat, toRightM: -strap.boat.toRightM } }),
  ...(strap.trailer && { trailer: { ...strap.trailer, toRightM: -strap.trailer.toRightM } }),
})
const other = { left: 'right', right: 'left', forward: 'forward', rearward: 'rearward', up: 'up' } as const

describe('the tie-down plan', () => {
  it('never holds less in any direction for one more strap', () => {
    fc.assert(fc.property(anyRig, anyStrap, books, (rig, strap, book) => {
      const before = holds(rig, book)
      const after = holds({ ...rig, tieDown: { ...rig.tieDown, straps: [...rig.tieDown.straps, strap] } }, book)
      return before.every(({ heldN }, index) => (after[index]?.heldN ?? 0) >= heldN - 1e-9 * Math.max(1, heldN))
    }), { numRuns: 500 })
  })

  it('never counts less, in number or aggregate, for one more strap, nor falls from held to short', () => {
    fc.assert(fc.property(anyRig, anyStrap, books, (rig, strap, book) => {
      const [before, after] = [rig, { ...rig, tieDown: { ...rig.tieDown, straps: [...rig.tieDown.straps, strap] } }].map((each) => tieDownPlanOf(each, book))
      const counts = (after?.aggregate?.countedN ?? 0) >= (before?.aggregate?.countedN ?? 0) && (after?.count?.fitted ?? 0) >= (before?.count?.fitted ?? 0)
      return counts && (before?.standing !== 'holds' || after?.standing === 'holds')
    }), { numRuns: 500 })
  })

  it('never holds less for one strap rated higher', () => {
    fc.assert(fc.property(anyRig, evenly(1, 5), books, (rig, times, book) => {
      const [first, ...others] = rig.tieDown.straps
      if (!first) return true
      const stronger = { ...first, ratedN: (first.ratedN ?? 0) * times, breakingN: (first.breakingN ?? 0) * times }
      const before = holds(rig, book)
      return holds({ ...rig, tieDown: { ...rig.tieDown, straps: [stronger, ...others] } }, book).every(({ heldN }, index) => heldN >= (before[index]?.heldN ?? 0) - 1e-9 * Math.max(1, heldN))
    }), { numRuns: 300 })
  })

  it('holds to the left what its mirror image holds to the right, and the same along the road', () => {
    fc.assert(fc.property(anyRig, books, (rig, book) => {
      const here = holds(rig, book)
      const there = holds({ ...rig, tieDown: { ...rig.tieDown, straps: rig.tieDown.straps.map(mirrored) } }, book)
      return here.every((hold, index) => {
        const block = index - (index % 5)
        const image = there.slice(block, block + 5).find(({ direction }) => direction === other[hold.direction])
        return image !== undefined && near(image.heldN, hold.heldN) && near(image.neededN, hold.neededN)
      })
    }))
  })

  it('needs twice as much for twice the boat, and straps hold the same', () => {
    fc.assert(fc.property(anyRig, evenly(0.1, 4), books, (rig, times, book) => {
      const heavier = { ...rig, tieDown: { ...rig.tieDown, friction: 0 }, boat: { ...rig.boat, dryMassKg: (rig.boat?.dryMassKg ?? 0) * times } }
      const one = holds({ ...rig, tieDown: { ...rig.tieDown, friction: 0 } }, book)
      return holds(heavier, book).every(({ neededN, strapsN }, index) => near(neededN, (one[index]?.neededN ?? 0) * times) && near(strapsN, one[index]?.strapsN ?? 0))
    }))
  })

  it('has a strap turned end for end pull the other way', () => {
    fc.assert(fc.property(anyStrap, ({ boat, trailer }) => {
      const [there, back] = [leadOf({ boat, trailer }), leadOf({ boat: trailer, trailer: boat })]
      return there !== undefined && back !== undefined && near(there.pull.aft, -back.pull.aft) && near(there.pull.right, -back.pull.right) && near(there.downRad, -back.downRad) && near(there.offRad, back.offRad)
    }))
  })

  it('holds with straps of the rating it names', () => {
    fc.assert(fc.property(anyRig, (rig) => {
      const direct = { ...rig, tieDown: { ...rig.tieDown, bowStopBlocks: false, straps: rig.tieDown.straps.map((strap) => ({ ...strap, route: 'direct' as const })) } }
      return holds(direct, 'eu').every(({ direction, ratingEachN }) => {
        if (ratingEachN === undefined || ratingEachN <= 0) return true
        const bought = { ...direct, tieDown: { ...direct.tieDown, straps: direct.tieDown.straps.map((strap) => ({ ...strap, ratedN: ratingEachN })) } }
        const hold = holds(bought, 'eu').find((row) => row.direction === direction)
        return hold?.standing === 'holds' && near(hold.heldN, hold.neededN)
      })
    }))
  })

  it('holds what it lacks with the straps it says would do, and not with one set less', () => {
    fc.assert(fc.property(anyRig, (rig) => {
      const [sum] = tieDownPlanOf({ ...rig, tieDown: { ...rig.tieDown, straps: [], bowStopBlocks: false } }, 'eu').methods
      return sum !== undefined && Object.values(sum.wouldDo).flat().every(({ count, position, ratedN, tensionN }) => {
        const set = position === 'transom pair' ? 2 : 1
        return tensionN <= ratedN * (1 + 1e-9) && (count === set || (tensionN * count) / (count - set) > ratedN * (1 - 1e-9))
      })
    }))
  })

  it('gives every mass and every set of straps a finite sum', () => {
    fc.assert(fc.property(anyRig, books, (rig, book) => holds(rig, book).every(({ neededN, heldN, share }) => [neededN, heldN, share].every((value) => Number.isFinite(value) && value >= 0))))
    expect(ruleBooks).toHaveLength(2)
  })
})
