import { commonPractice, published } from '../rules/cite'
import type { Source } from '../rules/rule-book'

/** Where the figures of the tie-down plan come from; the standards themselves are not free and were not read, their restatements were. */
export const lashingSources = {
  forces: published('49 CFR 393.102(a)', 'benchmark: forces forward, rearward and sideways'),
  upward: published('49 CFR 393.102(b)', 'benchmark: 20 % of the weight where the load is not contained'),
  aggregate: published('49 CFR 393.106(d)', 'benchmark: half the weight, direct straps count half'),
  weakestPart: published('49 CFR 393.108(a)', 'a tiedown holds what its weakest part or anchor holds'),
  count: published('49 CFR 393.110', 'benchmark, as restated by the agency'),
  balance: published('EN 12195-1:2010', 'as restated in the load securing handbook of the German insurers’ association, 4.1.6'),
  dynamicFriction: published('CTU Code annex 7', 'beside direct lashings three quarters of the static friction count'),
  friction: published('CTU Code annex 7, appendix 2', 'nearest entries; no figure for a hull on its supports was found'),
  rollers: commonPractice,
} as const satisfies Readonly<Record<string, Source>>
