import { commercialRule, commonPractice, published } from '../rules/cite'
import type { Source } from '../rules/rule-book'

/** Where the figures of the tie-down plan come from; the standards themselves are not free and were not read, their restatements were. */
export const lashingSources = {
  forces: commercialRule('393.102(a)', 'forces forward, rearward and sideways'),
  upward: commercialRule('393.102(b)', '20 % of the weight where the load is not contained'),
  aggregate: commercialRule('393.106(d)', 'half the weight, direct straps count half'),
  weakestPart: commercialRule('393.108(a)', 'a tiedown holds what its weakest part or anchor holds'),
  count: commercialRule('393.110', 'as restated by the agency'),
  balance: published('EN 12195-1:2010', 'as restated in the load securing handbook of the German insurers’ association, 4.1.6'),
  dynamicFriction: published('CTU Code annex 7', 'beside direct lashings three quarters of the static friction count'),
  friction: published('CTU Code annex 7, appendix 2', 'nearest entries; no figure for a hull on its supports was found'),
  rollers: commonPractice,
} as const satisfies Readonly<Record<string, Source>>
