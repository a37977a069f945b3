import type { Source } from './rule-book'

/** A regulation, standard or handbook that was read, with its clause. */
export const published = (title: string, clause?: string): Source => (clause === undefined ? { kind: 'published', title } : { kind: 'published', title, clause })

export const commonPractice: Source = { kind: 'common practice' }

/** Remembered, not confirmed: never the ground of a fail by itself. */
export const fromMemory = (title: string): Source => ({ kind: 'from memory', title })
