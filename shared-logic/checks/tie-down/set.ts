import { commercialRule, commonPractice, fromMemory } from '../../rules/cite'
import { boatSecuring } from '../../rules/running-gear-sources'
import { isUnder } from '../../rules/beyond'
import { securementForces } from '../../rules/securement-forces'
import { aggregateLimitN, isAggregateEnough, neededAggregateN, type CountedTiedown, type TiedownRoute } from '../../rules/tie-down-capacity'
import { leastTiedowns } from '../../rules/tiedown-count'
import type { FieldValues } from '../../survey/answer'
import { measured } from '../../units/quantity'
import { weightN } from '../../units/us-customary'
import { carriesBoat, underUs } from '../applies'
import { advisory, choiceCheck, failed, numberOf, passed, textOf, unseen } from '../builders'
import type { Check, Found, JudgeContext } from '../check'
import { allOf } from '../equipment'
import { workedOut } from '../worked-out'

const force = (n: number) => measured('force', n)

const over: Readonly<Record<string, TiedownRoute>> = { 'to the other side': 'other side', 'back to the same side': 'same side' }

/** The straps recorded; those to the boat's own eyes are direct. Undefined while the strap over the boat is still to be read. */
const countedStraps = (values: FieldValues): readonly CountedTiedown[] | undefined => {
  const direct = ['bow', 'left', 'right'].flatMap((id): CountedTiedown[] => {
    const limitN = numberOf(values, id)
    return limitN === undefined ? [] : [{ limitN, route: 'direct' }]
  })
  const route = over[textOf(values, 'route') ?? '']
  if (route === undefined) return direct
  const limitN = numberOf(values, 'over')
  return limitN === undefined ? undefined : [...direct, { limitN, route }]
}

/** By the straps and the boat of the record: the boat's mass is added up, so a shortfall is an advisory. */
const totalWorkedOut = (context: JudgeContext): Found => {
  const { aggregate, reckoned, straps } = workedOut(context).planWithoutWinch
  if (aggregate?.neededN === undefined || !reckoned || straps.length === 0 || aggregate.standing === 'waits') return { outcome: 'not worked out' }
  return {
    outcome: aggregate.standing === 'holds' ? 'enough' : 'short on paper',
    values: { counted: force(aggregate.countedN), needed: force(aggregate.neededN), boat: measured('mass', reckoned.massKg), forward: force(securementForces(weightN(reckoned.massKg), 'breaking').forwardN), straps: straps.length },
  }
}

const judgeTotal = (values: FieldValues, context: JudgeContext): Found | undefined => {
  if (numberOf(values, 'boat') === undefined && textOf(values, 'basis') === 'worked out') return totalWorkedOut(context)
  const boatKg = numberOf(values, 'boat')
  const straps = countedStraps(values)
  if (boatKg === undefined || textOf(values, 'route') === undefined || straps === undefined || straps.length === 0) return undefined
  const weight = weightN(boatKg)
  const counted = aggregateLimitN(straps)
  return {
    outcome: isAggregateEnough(counted, weight) ? 'enough' : 'short',
    values: { counted: force(counted), needed: force(neededAggregateN(weight)), boat: measured('mass', boatKg), forward: force(securementForces(weight, 'breaking').forwardN), straps: straps.length },
  }
}

const countWorkedOut = (context: JudgeContext): Found => {
  const { count, straps } = workedOut(context).planWithoutWinch
  const lengthM = context.rig.boat?.lengthM
  if (count === undefined || straps.length === 0) return { outcome: 'not worked out' }
  if (count.least === undefined || lengthM === undefined) return { outcome: 'length unknown', values: { count: count.fitted } }
  return { outcome: count.standing === 'holds' ? 'enough' : 'too few', values: { count: count.fitted, least: count.least, length: measured('length', lengthM) } }
}

const judgeCount = (values: FieldValues, context: JudgeContext): Found | undefined => {
  const { rig } = context
  const count = numberOf(values, 'count')
  if (count === undefined && textOf(values, 'basis') === 'worked out') return countWorkedOut(context)
  const blocked = textOf(values, 'blocked')
  if (count === undefined || blocked === undefined) return undefined
  const lengthM = rig.boat?.lengthM
  if (lengthM === undefined) return { outcome: 'length unknown', values: { count } }
  const least = leastTiedowns(lengthM, rig.boat?.dryMassKg, blocked === 'blocked')
  return { outcome: isUnder(count, least) ? 'too few' : 'enough', values: { count, least, length: measured('length', lengthM) } }
}

export const tieDownSetChecks: readonly Check[] = [
  choiceCheck({
    id: 'tie-down.tension',
    station: 'tie-down',
    positions: 'strap',
    applies: carriesBoat,
    outcomes: { 'tight and flat': passed, 'could be tighter': advisory('before it is towed'), 'tail loose': advisory('before it is towed'), slack: failed('before it is towed'), 'not fitted': failed('before it is towed') },
    caution: true,
    sources: [commercialRule('393.104(f)', 'tiedowns do not come loose'), commonPractice],
  }),
  choiceCheck({
    id: 'tie-down.bow-lead',
    station: 'tie-down',
    positions: 'bow strap',
    applies: carriesBoat,
    drawing: 'bow tie',
    photograph: true,
    outcomes: {
      'down and back to the frame': passed,
      'straight down': advisory('before next trip'),
      'to the winch post': advisory('before next trip'),
      'around the bow rail or cleat': advisory('before it is towed'),
      'no such strap': failed('before it is towed'),
    },
    sources: [boatSecuring('the winch and its strap are for loading; a further tie holds the bow on the road'), commonPractice],
  }),
  choiceCheck({
    id: 'tie-down.transom-lead',
    station: 'tie-down',
    positions: 'transom strap',
    applies: carriesBoat,
    drawing: 'transom straps',
    photograph: true,
    outcomes: {
      'down and forward': passed,
      'straight down': advisory('before next trip'),
      'down and aft': advisory('before it is towed'),
      'over the gunwale': passed,
      'to trim tab or ladder': failed('before it is towed'),
      'no such strap': failed('before it is towed'),
    },
    sources: [boatSecuring('two straps from the stern eyes to the frame'), commonPractice],
  }),
  {
    id: 'tie-down.total',
    station: 'tie-down',
    positions: 'once',
    applies: allOf(carriesBoat, underUs),
    drawing: 'transom straps',
    fields: [
      { kind: 'choice', id: 'basis', options: ['labels', 'worked out'], optional: true },
      { kind: 'reading', id: 'boat', quantity: 'mass', min: 30, max: 30_000, optional: true },
      { kind: 'reading', id: 'bow', quantity: 'force', min: 100, max: 250_000, optional: true },
      { kind: 'reading', id: 'left', quantity: 'force', min: 100, max: 250_000, optional: true },
      { kind: 'reading', id: 'right', quantity: 'force', min: 100, max: 250_000, optional: true },
      { kind: 'choice', id: 'route', options: ['none', 'to the other side', 'back to the same side'], optional: true },
      { kind: 'reading', id: 'over', quantity: 'force', min: 100, max: 250_000, when: { field: 'route', oneOf: ['to the other side', 'back to the same side'] } },
    ],
    outcomes: { enough: passed, 'short on paper': advisory('before it is towed'), short: advisory('before it is towed'), 'not worked out': unseen },
    judge: judgeTotal,
    sources: [commercialRule('393.106(d)', 'aggregate working load limit'), commercialRule('393.102(a)', 'forces a load must be held against')],
  },
  {
    id: 'tie-down.number',
    station: 'tie-down',
    positions: 'once',
    applies: allOf(carriesBoat, underUs),
    fields: [
      { kind: 'choice', id: 'basis', options: ['counted', 'worked out'], optional: true },
      { kind: 'count', id: 'count', min: 0, max: 20, optional: true },
      { kind: 'choice', id: 'blocked', options: ['blocked', 'not blocked'], optional: true },
    ],
    outcomes: { enough: passed, 'too few': advisory('before it is towed'), 'length unknown': unseen, 'not worked out': unseen },
    judge: judgeCount,
    sources: [commercialRule('393.110', 'least number of tiedowns, as restated by the agency'), fromMemory('49 CFR 393.110, loads up to 5 ft and over 1,100 lb')],
  },
]
