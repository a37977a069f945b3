import { commercialRule, commonPractice, fromMemory, published } from '../../rules/cite'
import { lashingScrapping } from '../../rules/running-gear-sources'
import type { RuleBook } from '../../rules/rule-book'
import { breakingOfLashingCapacityN, lashingCapacityOfBreakingN, unmarkedWebbingLimitN, weakestPartN, workingLimitOfBreakingN } from '../../rules/tie-down-capacity'
import type { FieldValues } from '../../survey/answer'
import { measured } from '../../units/quantity'
import { carriesBoat } from '../applies'
import { advisory, choiceCheck, failed, numberOf, passed, textOf } from '../builders'
import type { Check, Found, JudgeContext } from '../check'
import { judgeWebbing, webbingFields, webbingOutcomes, webbingSources } from '../webbing'

const unweakened = commercialRule('393.104(b)', 'no damaged or weakened component')
const lashingGear = lashingScrapping('seams, labels, ratchets, hooks')

const force = (n: number) => measured('force', n)

/**
 * What a label counts, N, in the rule book's own terms: working load limit in the United States (a third of the breaking
 * strength), lashing capacity in Europe (half of it). The two are not mixed.
 */
const markedLimitN = (marking: string, strengthN: number, ruleBook: RuleBook): number => {
  if (marking === 'breaking strength') return ruleBook === 'us' ? workingLimitOfBreakingN(strengthN) : lashingCapacityOfBreakingN(strengthN)
  return marking === 'lashing capacity' && ruleBook === 'us' ? workingLimitOfBreakingN(breakingOfLashingCapacityN(strengthN)) : strengthN
}

/** Unmarked webbing: by its width in the United States, nothing at all in Europe. */
const judgeUnmarked = (values: FieldValues, { ruleBook }: JudgeContext): Found | undefined => {
  if (ruleBook === 'eu') return { outcome: 'no label' }
  const widthM = numberOf(values, 'width')
  if (widthM === undefined) return undefined
  const limitN = unmarkedWebbingLimitN(widthM)
  const width = measured('smallLength', widthM)
  return limitN === undefined ? { outcome: 'no rating', values: { width } } : { outcome: 'by its width', values: { width, limit: force(limitN) } }
}

const judgeLabel = (values: FieldValues, context: JudgeContext): Found | undefined => {
  const marking = textOf(values, 'marking')
  if (marking === undefined) return undefined
  if (marking === 'unreadable' || marking === 'none') return judgeUnmarked(values, context)
  const strengthN = numberOf(values, 'strength')
  if (strengthN === undefined) return undefined
  const partsN = numberOf(values, 'weakest')
  const limitN = markedLimitN(marking, strengthN, context.ruleBook)
  const counts = partsN === undefined ? limitN : weakestPartN(limitN, partsN)
  return { outcome: counts < limitN ? 'limited by a part' : 'readable', values: { limit: force(counts), strap: force(limitN) } }
}

export const strapChecks: readonly Check[] = [
  {
    id: 'tie-down.webbing',
    station: 'tie-down',
    positions: 'tie-down strap',
    drawing: 'strap width',
    photograph: true,
    caution: true,
    fields: webbingFields,
    outcomes: webbingOutcomes,
    judge: judgeWebbing,
    sources: webbingSources,
  },
  choiceCheck({
    id: 'tie-down.stitching',
    station: 'tie-down',
    positions: 'tie-down strap',
    drawing: 'strap width',
    photograph: true,
    outcomes: { whole: passed, 'not sewn': passed, 'few threads worn': advisory('before next trip'), 'threads cut or broken': failed('before it is towed'), 'home-made': advisory('before next trip') },
    sources: [unweakened, lashingGear],
  }),
  choiceCheck({
    id: 'tie-down.tensioner',
    station: 'tie-down',
    positions: 'tie-down strap',
    photograph: true,
    caution: true,
    outcomes: {
      'works and locks': passed,
      stiff: advisory('at next service'),
      rusted: advisory('before next trip'),
      'cam buckle': advisory('before next trip'),
      'does not lock': failed('before it is towed'),
      'bent or cracked': failed('before it is towed'),
    },
    sources: [unweakened, lashingGear, commonPractice],
  }),
  choiceCheck({
    id: 'tie-down.hooks',
    station: 'tie-down',
    positions: 'tie-down strap',
    photograph: true,
    outcomes: { 'true and seated': passed, 'latch missing': advisory('before next trip'), rusted: advisory('before next trip'), 'seated on its tip': advisory('before it is towed'), 'opened up': failed('before it is towed'), cracked: failed('before it is towed') },
    sources: [unweakened, published('EN 12195-2, as restated in instructions', 'a hook mouth opened by more than 5 % or deformed')],
  }),
  choiceCheck({
    id: 'tie-down.knots',
    station: 'tie-down',
    positions: 'tie-down strap',
    applies: carriesBoat,
    photograph: true,
    outcomes: { 'straight and flat': passed, twisted: advisory('before it is towed'), knotted: failed('before it is towed'), 'joined strap to strap': failed('before it is towed') },
    sources: [commercialRule('393.104(f)', 'tiedowns are not knotted'), published('EN 12195-2, as restated in instructions', 'never used when knotted')],
  }),
  {
    id: 'tie-down.label',
    station: 'tie-down',
    positions: 'tie-down strap',
    photograph: true,
    fields: [
      { kind: 'choice', id: 'marking', options: ['working load limit', 'lashing capacity', 'breaking strength', 'unreadable', 'none'] },
      { kind: 'reading', id: 'strength', quantity: 'force', min: 100, max: 250_000, when: { field: 'marking', oneOf: ['working load limit', 'lashing capacity', 'breaking strength'] } },
      { kind: 'reading', id: 'weakest', quantity: 'force', min: 100, max: 250_000, optional: true, when: { field: 'marking', oneOf: ['working load limit', 'lashing capacity', 'breaking strength'] } },
      { kind: 'reading', id: 'width', quantity: 'smallLength', min: 0.015, max: 0.15, when: { field: 'marking', oneOf: ['unreadable', 'none'] } },
    ],
    outcomes: { readable: passed, 'limited by a part': passed, 'by its width': advisory('before next trip'), 'no rating': advisory('before next trip'), 'no label': advisory('before it is towed') },
    judge: judgeLabel,
    sources: {
      us: [commercialRule('393.108(a), (b)', 'weakest part; unmarked webbing by width'), published('Web tie-down trade standard T-1', 'design factor 3'), fromMemory('webbing below 1-3/4 in: no confirmed table value')],
      eu: [published('EN 12195-2, marking section as restated', 'LC on the label; only marked lashings are used'), lashingGear],
    },
  },
  choiceCheck({
    id: 'tie-down.chafe',
    station: 'tie-down',
    positions: 'tie-down strap',
    applies: carriesBoat,
    photograph: true,
    outcomes: { 'runs clear': passed, protected: passed, 'rubs on the hull': advisory('before next trip'), 'bears on an edge': failed('before it is towed'), 'near the exhaust or tyre': failed('before it is towed') },
    sources: [commercialRule('393.104(f)', 'edge protection where a tiedown would be cut or worn'), commonPractice],
  }),
  choiceCheck({
    id: 'tie-down.anchors',
    station: 'tie-down',
    positions: 'tie-down strap',
    photograph: true,
    outcomes: { 'sound at both ends': passed, rusted: advisory('before next trip'), 'on a weak part': advisory('before it is towed'), loose: failed('before it is towed'), cracked: failed('before it is towed') },
    sources: [commercialRule('393.108(a)', 'a tiedown holds what its weakest part or anchor holds'), commonPractice],
  }),
]
