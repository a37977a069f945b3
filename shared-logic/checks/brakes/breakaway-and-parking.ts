import { breakawayBatteryV, breakawayHoldS } from '../../rules/breakaway'
import { commercialRule, commonPractice, published, ukBrakeGuide } from '../../rules/running-gear-sources'
import { measured } from '../../units/quantity'
import { advisory, choiceCheck, failed, notApplicable, numberOf, passed, unseen } from '../builders'
import type { Check } from '../check'
import { allOf, braked, brakedBy, underRuleBook } from '../equipment'

/** What holds the trailer when it is parked, and when it has come off. */
export const breakawayAndParkingChecks: readonly Check[] = [
  choiceCheck({
    id: 'brakes.breakaway-cable',
    station: 'brakes',
    positions: 'once',
    applies: braked,
    photograph: true,
    outcomes: {
      'free, to its own anchor': passed,
      'pin or lever stiff': advisory('before next trip'),
      'hooked to the chains': advisory('before it is towed'),
      'looped over the ball': failed('before it is towed'),
      'frayed or kinked': failed('before it is towed'),
      missing: failed('before it is towed'),
    },
    sources: { us: [commercialRule('393.43(d)'), commonPractice], eu: [ukBrakeGuide, published('UK tow ball guides', 'breakaway cable not over the ball')] },
  }),
  {
    id: 'brakes.breakaway-hold',
    station: 'brakes',
    positions: 'once',
    applies: allOf(underRuleBook('us'), braked),
    caution: true,
    fields: [{ kind: 'reading', id: 'held', quantity: 'duration', min: 0, max: 7200 }],
    outcomes: { holds: passed, 'lets go too soon': failed('before it is towed'), 'does not hold': failed('before it is towed') },
    judge: (values) => {
      const held = numberOf(values, 'held')
      if (held === undefined) return undefined
      if (held === 0) return { outcome: 'does not hold' }
      return { outcome: held < breakawayHoldS - 1e-6 ? 'lets go too soon' : 'holds', values: { held: measured('duration', held) } }
    },
    sources: [commercialRule('393.43(d)'), published('District of Columbia Municipal Regulations', '18-721')],
  },
  {
    id: 'brakes.breakaway-battery',
    station: 'brakes',
    positions: 'once',
    applies: brakedBy('electric', 'electric over hydraulic'),
    fields: [{ kind: 'reading', id: 'voltage', quantity: 'voltage', min: 0, max: 16 }],
    outcomes: { full: passed, 'part charged': passed, low: advisory('before next trip'), flat: failed('before it is towed') },
    judge: (values) => {
      const voltage = numberOf(values, 'voltage')
      if (voltage === undefined) return undefined
      const { full, low, flat } = breakawayBatteryV
      const outcome = voltage < flat - 1e-9 ? 'flat' : voltage < low - 1e-9 ? 'low' : voltage < full - 1e-9 ? 'part charged' : 'full'
      return { outcome, values: { voltage: measured('voltage', voltage) } }
    },
    sources: [commonPractice],
  },
  choiceCheck({
    id: 'brakes.parking',
    station: 'brakes',
    positions: 'once',
    applies: allOf(underRuleBook('eu'), braked),
    caution: true,
    outcomes: {
      'holds on the slope': passed,
      'lever travels far': advisory('before next trip'),
      'holds on one side': failed('before it is towed'),
      'does not hold': failed('before it is towed'),
      'not fitted': failed('before it is towed'),
      'not tried': unseen,
    },
    sources: [ukBrakeGuide],
  }),
  choiceCheck({
    id: 'brakes.chocks',
    station: 'brakes',
    positions: 'once',
    applies: underRuleBook('us'),
    outcomes: { 'two that fit': passed, 'one, or worn': advisory('before next trip'), none: advisory('before next trip'), 'parking brake fitted': notApplicable },
    sources: [commonPractice],
  }),
]
