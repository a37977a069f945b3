import type { Reach, RuleBook, Source } from './rule-book'

const titled = (title: string, clause: string | undefined) => (clause === undefined ? { title } : { title, clause })

/** A standard, table or handbook that was read, with its clause. It binds nobody by itself; a regulation is cited by `law` and its fellows. */
export const published = (title: string, clause?: string): Source => ({ kind: 'published', ...titled(title, clause) })

/** A regulation that was read, with whom it binds. */
export const law = (binds: Reach, title: string, clause?: string): Source => ({ kind: 'published', ...titled(title, clause), binds })

/** 49 CFR 393 and 396 bind commercial vehicles only: a benchmark for a boat towed in private. */
export const commercialRule = (clause: string, says?: string): Source => law('commercial', `49 CFR ${clause}`, says)

/** 49 CFR 570, subpart B: written for vehicles over 10,000 lb. */
export const inUseStandard = (clause: string): Source => law('heavy', `49 CFR ${clause}`, 'vehicle in use inspection standards')

export const newZealand = (clause: string): Source => law('one place', 'New Zealand vehicle inspection requirements', clause)
export const maryland = (clause: string): Source => law('one place', 'Maryland vehicle inspection rules (COMAR)', clause)
export const quebec = (section: string): Source => law('one place', 'Québec regulation C-24.2, r. 32', section)
export const ukInspection = (clause: string): Source => law('one place', 'UK MOT inspection manual', clause)
export const roadworthiness = (item: string): Source => law('eu', 'Directive 2014/45/EU, Annex I', `item ${item}`)

/** Articles, guides and manuals: read, but nothing a reader could look up by title and clause. */
export const tradeLiterature = (title: string, clause?: string): Source => ({ kind: 'trade literature', ...titled(title, clause) })

export const commonPractice: Source = { kind: 'common practice' }

/** Remembered, not confirmed: never the ground of a fail by itself. */
export const fromMemory = (title: string): Source => ({ kind: 'from memory', title })

/** Whether a source binds nobody it is shown to: by its reach under either book, or because it is the other book's rule (`asShownUnder`). */
export const isBenchmark = (source: Source): boolean =>
  source.kind === 'published' && (source.benchmark === true || (source.binds !== undefined && source.binds !== 'us' && source.binds !== 'eu'))

/** The source as it stands to somebody judged by this rule book: a rule that does not bind him is marked a benchmark. */
export const asShownUnder = (ruleBook: RuleBook, source: Source): Source =>
  source.kind === 'published' && source.binds !== undefined && source.binds !== ruleBook ? { ...source, benchmark: true } : source
