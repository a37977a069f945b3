import { describe, expect, it } from 'vitest'
import { tieDownPlanOf } from '../../../shared-logic/lashing/plan'
import type { Rig } from '../../../shared-logic/rig/rig'
import { ruleBooks } from '../../../shared-logic/rules/rule-book'
import { en } from '../../../shared-logic/words/en'
import { sayTieDown } from '../../../shared-logic/words/sums/tie-down'

const strapped: Rig = {
  name: 'Rig',
  trailer: { supports: 'bunks' },
  boat: { lengthM: 5.5, dryMassKg: 1500 },
  tieDown: {
    straps: [
      { position: 'strap bow tie', place: 'bow tie', route: 'direct', ratedN: 9000, angles: { downRad: 0.6, offRad: 0, leads: 'aft', side: 'left' } },
      { position: 'strap transom left', place: 'transom', route: 'direct', ratedN: 5000, angles: { downRad: 0.5, offRad: 0.35, leads: 'aft', side: 'left' } },
    ],
  },
}

describe('a tie-down plan in words', () => {
  it.each(ruleBooks)('fills every gap under the rules of %s, known or not', (ruleBook) => {
    for (const rig of [strapped, { name: 'Bare', trailer: {} }]) {
      const { lines, formula, cautions } = sayTieDown(en, tieDownPlanOf(rig, ruleBook), 'metric')
      expect([...lines.map(({ text }) => text), formula, ...cautions].filter((text) => /[{}]/.test(text))).toEqual([])
      expect(lines.length).toBeGreaterThan(2)
    }
  })
  it('says that a transom strap leads the wrong way, and what it weighs by', () => {
    const texts = sayTieDown(en, tieDownPlanOf(strapped, 'us'), 'metric').lines.map(({ text }) => text)
    expect(texts).toContain('Left transom strap does not pull forward. A transom strap should lead down and forward, so that it holds the boat against its bow stop.')
    expect(texts[0]).toBe('Boat as loaded: 1,500 kg')
  })
  it('judges nothing while no strap is recorded, and still tells what is called for', () => {
    const lines = ruleBooks.flatMap((ruleBook) => sayTieDown(en, tieDownPlanOf({ ...strapped, tieDown: { straps: [] } }, ruleBook), 'metric').lines)
    expect(new Set(lines.flatMap(({ verdict }) => verdict ?? []))).toEqual(new Set(['not seen']))
    expect(lines.filter(({ text }) => text.includes('would hold the boat')).length).toBeGreaterThan(0)
  })
  it('never calls a benchmark a fail', () => {
    expect(ruleBooks.flatMap((ruleBook) => sayTieDown(en, tieDownPlanOf(strapped, ruleBook), 'metric').lines).filter(({ verdict }) => verdict === 'fail')).toEqual([])
  })
})
