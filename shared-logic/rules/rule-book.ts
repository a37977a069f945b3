import { z } from 'zod'

/** The rule book a survey is judged by: it selects brake thresholds, lamp tables, tread depth and tie-down method. */
export const ruleBooks = ['us', 'eu'] as const
export const ruleBookSchema = z.enum(ruleBooks)
export type RuleBook = z.infer<typeof ruleBookSchema>

/**
 * Whom a rule binds. `us`, `eu`: everybody where that rule book holds. `commercial`: vehicles at work only. `heavy`: vehicles over 10,000 lb.
 * `one place`: a single state or country. `ships`: another trade altogether.
 */
export type Reach = RuleBook | 'commercial' | 'heavy' | 'one place' | 'ships'

/**
 * Where a criterion comes from.
 *
 * `published`: title and clause of a regulation, standard or handbook that was read. A regulation says whom it `binds`; without that it is
 * a standard, which binds nobody by itself. `benchmark` is set where it is shown to somebody it does not bind (`sourcesOf`).
 * `trade literature`: articles, guides and manuals that were read, but that have no title and clause to look up.
 * `common practice`: trade knowledge without a source. `from memory`: remembered, not confirmed;
 * such a figure never decides a fail by itself.
 */
export type Source =
  | { readonly kind: 'published'; readonly title: string; readonly clause?: string; readonly binds?: Reach; readonly benchmark?: true }
  | { readonly kind: 'trade literature'; readonly title: string; readonly clause?: string }
  | { readonly kind: 'common practice' }
  | { readonly kind: 'from memory'; readonly title: string }
