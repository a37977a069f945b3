import type { Reach } from '../../rules/rule-book'

/** How a source is told beside a criterion. */
export const sources = {
  tradeLiterature: 'trade literature',
  commonPractice: 'common practice, no source',
  fromMemory: 'from memory, not confirmed',
  /** Said of a rule shown to somebody it does not bind. */
  benchmarks: {
    us: 'benchmark: a United States rule',
    eu: 'benchmark: a European rule',
    commercial: 'benchmark: binds commercial vehicles only',
    heavy: 'benchmark: written for vehicles over 10,000 lb',
    'one place': 'binds only there, a benchmark elsewhere',
    ships: 'by analogy: written for ships',
  } satisfies Readonly<Record<Reach, string>>,
} as const
