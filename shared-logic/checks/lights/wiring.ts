import { commercialRule, commonPractice } from '../../rules/cite'
import { careArticles } from '../../rules/running-gear-sources'
import { lampDropV } from '../../rules/voltage-drop'
import { measured } from '../../units/quantity'
import { advisory, choiceCheck, failed, numberOf, passed, unseen } from '../builders'
import type { Check } from '../check'

/** Wiring, earth, and the habit of pulling the plug. */
export const wiringChecks: readonly Check[] = [
  choiceCheck({
    id: 'lights.wiring-run',
    station: 'lights',
    positions: 'once',
    photograph: true,
    outcomes: {
      'clipped and whole': passed,
      hanging: advisory('before next trip'),
      'cover cracked': advisory('within a month'),
      'chafed or frayed': failed('before next trip'),
      pinched: failed('before next trip'),
      'bare conductor': failed('before it is towed'),
    },
    sources: { us: [commercialRule('393.28'), commonPractice], eu: [commonPractice] },
  }),
  choiceCheck({
    id: 'lights.wiring-joints',
    station: 'lights',
    positions: 'once',
    photograph: true,
    outcomes: {
      sealed: passed,
      'taped or twisted': advisory('within a month'),
      'clip-on taps': advisory('at next service'),
      'green with corrosion': advisory('before next trip'),
      loose: failed('before it is towed'),
    },
    sources: [commonPractice],
  }),
  choiceCheck({
    id: 'lights.wiring-entries',
    station: 'lights',
    positions: 'once',
    photograph: true,
    outcomes: {
      'grommets in place': passed,
      'grommet missing': advisory('within a month'),
      'cut into by the edge': failed('before next trip'),
      'no entries into metal': passed,
    },
    sources: [commonPractice],
  }),
  choiceCheck({
    id: 'lights.earth-connection',
    station: 'lights',
    positions: 'once',
    photograph: true,
    outcomes: {
      'clean and tight': passed,
      'rusted or loose': advisory('before next trip'),
      'only through the ball': failed('before next trip'),
      'not found': unseen,
    },
    sources: [commonPractice],
  }),
  {
    id: 'lights.voltage-drop',
    station: 'lights',
    positions: 'once',
    fields: [
      { kind: 'reading', id: 'plug', quantity: 'voltage', min: 8, max: 16 },
      { kind: 'reading', id: 'lamp', quantity: 'voltage', min: 0, max: 16 },
    ],
    outcomes: { good: passed, fair: advisory('at next service'), attend: advisory('before next trip'), impossible: unseen },
    judge: (values) => {
      const plug = numberOf(values, 'plug')
      const lamp = numberOf(values, 'lamp')
      if (plug === undefined || lamp === undefined) return undefined
      const drop = plug - lamp
      const shown = { drop: measured('voltage', drop) }
      if (drop < -0.1) return { outcome: 'impossible', values: shown }
      return { outcome: drop > lampDropV.attend + 1e-9 ? 'attend' : drop > lampDropV.good + 1e-9 ? 'fair' : 'good', values: shown }
    },
    sources: [commonPractice],
  },
  choiceCheck({
    id: 'lights.unplugged',
    station: 'lights',
    positions: 'once',
    outcomes: {
      'always unplugged': passed,
      'sealed lamps, left plugged': advisory('at next service'),
      'left plugged': advisory('before next trip'),
      'not known': unseen,
    },
    sources: [careArticles, commonPractice],
  }),
]
