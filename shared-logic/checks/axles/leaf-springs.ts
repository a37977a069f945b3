import { commonPractice, inUseStandard, maryland, quebec } from '../../rules/cite'
import { advisory, choiceCheck, failed, passed } from '../builders'
import type { Check } from '../check'
import { allOf, severalAxles, suspendedOn } from '../equipment'

const leaf = suspendedOn('leaf springs')

/** Leaf springs and what holds them. */
export const leafSpringChecks: readonly Check[] = [
  choiceCheck({
    id: 'axles.leaf-springs',
    station: 'axles',
    positions: 'hub',
    applies: leaf,
    photograph: true,
    drawing: 'leaf spring',
    outcomes: {
      sound: passed,
      'surface rust': advisory('at next service'),
      'leaves spread by rust': advisory('before next trip'),
      flattened: advisory('before next trip'),
      'leaf shifted': failed('before it is towed'),
      'leaf cracked or broken': failed('before it is towed'),
      'centre bolt broken': failed('before it is towed'),
    },
    sources: [maryland('11.14.05.03 A(2)(a)–(d)'), inUseStandard('570.61(a)'), commonPractice],
  }),
  choiceCheck({
    id: 'axles.u-bolts',
    station: 'axles',
    positions: 'hub',
    applies: leaf,
    photograph: true,
    drawing: 'leaf spring',
    outcomes: {
      tight: passed,
      'surface rust': advisory('at next service'),
      'short of thread': failed('before next trip'),
      'wasted by rust': failed('before it is towed'),
      loose: failed('before it is towed'),
      'cracked or missing': failed('before it is towed'),
    },
    sources: [maryland('11.14.05.03 A(2)(e), (f)'), inUseStandard('570.61(a)'), commonPractice],
  }),
  choiceCheck({
    id: 'axles.hangers',
    station: 'axles',
    positions: 'hub',
    applies: leaf,
    photograph: true,
    drawing: 'leaf spring',
    outcomes: {
      sound: passed,
      'surface rust': advisory('at next service'),
      'bent sideways': advisory('before next trip'),
      'wasted by rust': failed('before it is towed'),
      'weld cracked': failed('before it is towed'),
      'bolt loose or missing': failed('before it is towed'),
    },
    sources: [maryland('11.14.05.03 A(2)(e), (h)'), quebec('s. 152'), commonPractice],
  }),
  choiceCheck({
    id: 'axles.bushes',
    station: 'axles',
    positions: 'hub',
    applies: leaf,
    drawing: 'leaf spring',
    outcomes: {
      tight: passed,
      'dry, not greased': advisory('at next service'),
      worn: advisory('within a month'),
      'eye or shackle worn oval': failed('before next trip'),
      'bush gone': failed('before it is towed'),
    },
    sources: [maryland('11.14.05.03 A(2)(e)'), inUseStandard('570.61(a)'), commonPractice],
  }),
  choiceCheck({
    id: 'axles.equaliser',
    station: 'axles',
    positions: 'once',
    applies: allOf(leaf, severalAxles),
    photograph: true,
    outcomes: {
      free: passed,
      worn: advisory('within a month'),
      seized: failed('before next trip'),
      cracked: failed('before it is towed'),
    },
    sources: [maryland('11.14.05.03 A(2)(e)'), quebec('s. 152'), commonPractice],
  }),
]
