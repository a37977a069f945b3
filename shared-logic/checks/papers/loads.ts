import { balanceStandings, standingOf, verdictOfStanding, type BalanceStanding } from '../../balance/bands'
import { judgeLoad, neededRatingKg, reserveOf, reserveTarget } from '../../rules/ratings'
import { commonPractice, law } from '../../rules/cite'
import type { FieldValues } from '../../survey/answer'
import { measured } from '../../units/quantity'
import { advisory, failed, numberOf, passed, textOf, unseen } from '../builders'
import type { Check, Found, JudgeContext, Outcome } from '../check'
import { axlesOf, couplingOf, totalOf, workedOut, type Figure } from '../worked-out'
import { axlesMayCarryKg } from './axles-may-carry'

const massOf = (kg: number) => measured('mass', kg)
const onPaper = { weighed: '', reckoned: ' on paper' } as const

/** A mass against a rating. What is only added up never fails: it asks to be weighed. */
const judgeAgainst = ({ massKg, from }: Figure, ratingKg: number | undefined): Found => {
  if (ratingKg === undefined) return { outcome: 'rating unknown', values: { loaded: massOf(massKg) } }
  return {
    outcome: `${judgeLoad(massKg, ratingKg)}${onPaper[from]}`,
    values: {
      loaded: massOf(massKg),
      rating: massOf(ratingKg),
      over: massOf(Math.max(0, massKg - ratingKg)),
      reserve: measured('ratio', reserveOf(massKg, ratingKg)),
      target: measured('ratio', reserveTarget),
      needed: massOf(neededRatingKg(massKg, reserveTarget, 'of the rating')),
    },
  }
}

const loadOutcomes: Readonly<Record<string, Outcome>> = {
  within: passed,
  'within on paper': passed,
  'little reserve': advisory('before next trip'),
  'little reserve on paper': advisory('before next trip'),
  'over on paper': advisory('before it is towed'),
  over: failed('before it is towed'),
  'rating unknown': unseen,
  'not worked out': unseen,
}

const notWorkedOut = (waitsFor: readonly string[]): Found => ({ outcome: 'not worked out', values: { count: new Set(waitsFor).size } })

const judgeLoaded = (values: FieldValues, context: JudgeContext): Found | undefined => {
  const basis = textOf(values, 'basis')
  const massKg = numberOf(values, 'loaded')
  const ratingKg = context.rig.trailer.maximumMassKg
  if (basis === 'worked out') {
    const { sums } = workedOut(context)
    const figure = totalOf(sums)
    return figure ? judgeAgainst(figure, ratingKg) : notWorkedOut(sums.load.total.waitsFor)
  }
  return basis === undefined || massKg === undefined ? undefined : judgeAgainst({ massKg, from: basis === 'weighed' ? 'weighed' : 'reckoned' }, ratingKg)
}

const judgeAxles = (values: FieldValues, context: JudgeContext): Found | undefined => {
  const massKg = numberOf(values, 'axles')
  const ratingKg = axlesMayCarryKg(context.rig.trailer)
  if (massKg !== undefined) return judgeAgainst({ massKg, from: 'weighed' }, ratingKg)
  if (textOf(values, 'basis') !== 'worked out') return undefined
  const { sums } = workedOut(context)
  const figure = axlesOf(sums)
  return figure ? judgeAgainst(figure, ratingKg) : notWorkedOut(sums.balance.waitsFor)
}

/** Weighed, a share comes out by its band; reckoned, what would fail asks for the coupling scale first. */
const shareOutcomes: Readonly<Record<string, Outcome>> = Object.fromEntries(balanceStandings.flatMap((standing): [string, Outcome][] => {
  const verdict = verdictOfStanding[standing]
  const grave = verdict === 'fail'
  const weighed = verdict === 'pass' ? passed : grave ? failed('before it is towed') : advisory('before next trip')
  return [[standing, weighed], [`${standing} on paper`, verdict === 'pass' ? passed : advisory(grave ? 'before it is towed' : 'before next trip')]]
}))

const shareFound = (coupling: Figure, total: Figure, { sums }: ReturnType<typeof workedOut>): Found => {
  const { bands, smallestStaticKg } = sums.balance
  const share = coupling.massKg / total.massKg
  const standing: BalanceStanding = standingOf(share, coupling.massKg, bands, smallestStaticKg)
  const from = coupling.from === 'weighed' && (total.from === 'weighed' || standing === 'over the static limit' || standing === 'lifts') ? 'weighed' : 'reckoned'
  return {
    outcome: `${standing}${onPaper[from]}`,
    values: {
      coupling: massOf(coupling.massKg), total: massOf(total.massKg), share: measured('ratio', Math.round(share * 1000) / 1000), limit: massOf(smallestStaticKg ?? 0),
      passFrom: measured('ratio', bands.passFrom), passTo: measured('ratio', bands.passTo), failBelow: measured('ratio', bands.failBelow),
    },
  }
}

const judgeShare = (values: FieldValues, context: JudgeContext): Found | undefined => {
  const worked = workedOut(context)
  const couplingKg = numberOf(values, 'coupling')
  const totalKg = numberOf(values, 'total')
  const basis = textOf(values, 'basis')
  if (couplingKg === undefined && basis !== 'worked out') return undefined
  const coupling: Figure | undefined = couplingKg === undefined ? couplingOf(worked.sums) : { massKg: couplingKg, from: 'weighed' }
  const total: Figure | undefined = totalKg === undefined ? totalOf(worked.sums) : { massKg: totalKg, from: 'weighed' }
  if (coupling && total && coupling.massKg <= total.massKg) return shareFound(coupling, total, worked)
  return coupling && total ? { outcome: 'more than the whole', values: { coupling: massOf(coupling.massKg), total: massOf(total.massKg) } } : notWorkedOut(worked.sums.balance.waitsFor)
}

/** What the rig weighs against its ratings, and how much of it rests on the coupling: entered from scales, or taken from the sums. */
export const paperLoadChecks: readonly Check[] = [
  {
    id: 'papers.loaded-mass',
    station: 'papers',
    positions: 'once',
    caution: true,
    fields: [
      { kind: 'choice', id: 'basis', options: ['weighed', 'from papers', 'worked out'] },
      { kind: 'reading', id: 'loaded', quantity: 'mass', min: 50, max: 40_000, when: { field: 'basis', oneOf: ['weighed', 'from papers'] } },
    ],
    outcomes: loadOutcomes,
    judge: judgeLoaded,
    sources: [law('us', '49 CFR 571.3', 'gross vehicle weight rating'), commonPractice],
  },
  {
    id: 'papers.axle-load',
    station: 'papers',
    positions: 'once',
    fields: [
      { kind: 'choice', id: 'basis', options: ['weighed', 'worked out'], optional: true },
      { kind: 'reading', id: 'axles', quantity: 'mass', min: 50, max: 40_000, optional: true },
    ],
    outcomes: loadOutcomes,
    judge: judgeAxles,
    sources: [law('us', '49 CFR 571.3', 'gross axle weight rating, at the tyre-ground interface'), commonPractice],
  },
  {
    id: 'papers.coupling-share',
    station: 'papers',
    positions: 'once',
    caution: true,
    fields: [
      { kind: 'choice', id: 'basis', options: ['weighed', 'worked out'] },
      { kind: 'reading', id: 'coupling', quantity: 'mass', min: 0, max: 5_000, optional: true },
      { kind: 'reading', id: 'total', quantity: 'mass', min: 50, max: 40_000, optional: true },
    ],
    outcomes: { ...shareOutcomes, 'more than the whole': unseen, 'not worked out': unseen },
    judge: judgeShare,
    sources: [commonPractice],
  },
]
