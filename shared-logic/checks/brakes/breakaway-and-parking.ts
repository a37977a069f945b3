import { brakeThresholds, callsForBrakes } from '../../rules/brake-thresholds'
import { breakawayBatteryV, breakawayHoldS } from '../../rules/breakaway'
import { commercialRule, commonPractice, law } from '../../rules/cite'
import { towBallGuides, ukBrakeGuide } from '../../rules/running-gear-sources'
import { measured } from '../../units/quantity'
import { advisory, choiceCheck, failed, notApplicable, numberOf, passed, textOf, unseen } from '../builders'
import type { Check, JudgeContext } from '../check'
import { allOf, braked, brakedBy, underRuleBook } from '../equipment'

/** A breakaway is called for where brakes are; of a light trailer, or one of unknown mass, that is not sure. */
const missingCable = ({ rig: { trailer }, ruleBook }: JudgeContext): string => {
  if (trailer.brakes === undefined) return 'missing, brakes not known'
  if (ruleBook === 'eu') return 'missing'
  const called = trailer.maximumMassKg !== undefined && callsForBrakes(brakeThresholds['federal benchmark'], trailer.maximumMassKg) === true
  return called ? 'missing' : 'missing, not surely called for'
}

/** What holds the trailer when it is parked, and when it has come off. */
export const breakawayAndParkingChecks: readonly Check[] = [
  {
    id: 'brakes.breakaway-cable',
    station: 'brakes',
    positions: 'once',
    applies: braked,
    photograph: true,
    fields: [{ kind: 'choice', id: 'cable', options: ['free, to its own anchor', 'pin or lever stiff', 'hooked to the chains', 'looped over the ball', 'frayed or kinked', 'missing'] }],
    outcomes: {
      'free, to its own anchor': passed,
      'pin or lever stiff': advisory('before next trip'),
      'hooked to the chains': advisory('before it is towed'),
      'looped over the ball': failed('before it is towed'),
      'frayed or kinked': failed('before it is towed'),
      missing: failed('before it is towed'),
      'missing, not surely called for': advisory('before next trip'),
      'missing, brakes not known': unseen,
    },
    judge: (values, context) => {
      const cable = textOf(values, 'cable')
      return cable === undefined ? undefined : { outcome: cable === 'missing' ? missingCable(context) : cable }
    },
    sources: { us: [commercialRule('393.43(d)'), commonPractice], eu: [ukBrakeGuide, towBallGuides('breakaway cable not over the ball')] },
  },
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
    sources: [commercialRule('393.43(d)'), law('one place', 'District of Columbia Municipal Regulations', '18-721'), commonPractice],
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
  {
    id: 'brakes.parking',
    station: 'brakes',
    positions: 'once',
    applies: allOf(underRuleBook('eu'), braked),
    caution: true,
    fields: [{ kind: 'choice', id: 'holds', options: ['holds on the slope', 'lever travels far', 'holds on one side', 'does not hold', 'not fitted', 'not tried'] }],
    outcomes: {
      'holds on the slope': passed,
      'lever travels far': advisory('before next trip'),
      'holds on one side': failed('before it is towed'),
      'does not hold': failed('before it is towed'),
      'not fitted': failed('before it is towed'),
      'not tried': unseen,
      'not fitted, brakes not known': unseen,
    },
    judge: (values, { rig }) => {
      const holds = textOf(values, 'holds')
      return holds === undefined ? undefined : { outcome: holds === 'not fitted' && rig.trailer.brakes === undefined ? 'not fitted, brakes not known' : holds }
    },
    sources: [ukBrakeGuide],
  },
  choiceCheck({
    id: 'brakes.chocks',
    station: 'brakes',
    positions: 'once',
    applies: underRuleBook('us'),
    outcomes: { 'two that fit': passed, 'one, or worn': advisory('before next trip'), none: advisory('before next trip'), 'parking brake fitted': notApplicable },
    sources: [commonPractice],
  }),
]
