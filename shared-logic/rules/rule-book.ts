import { z } from 'zod'

/** The rule book a survey is judged by: it selects brake thresholds, lamp tables, tread depth and tie-down method. */
export const ruleBooks = ['us', 'eu'] as const
export const ruleBookSchema = z.enum(ruleBooks)
export type RuleBook = z.infer<typeof ruleBookSchema>

/**
 * Where a criterion comes from.
 *
 * `published`: title and clause of a regulation, standard or handbook that was read.
 * `common practice`: trade knowledge without a source. `from memory`: remembered, not confirmed;
 * such a figure never decides a fail by itself.
 */
export type Source =
  | { readonly kind: 'published'; readonly title: string; readonly clause?: string }
  | { readonly kind: 'common practice' }
  | { readonly kind: 'from memory'; readonly title: string }
