import type { z } from 'zod'
import { rigSchema, type Rig } from '../../shared-logic/rig/rig'
import { formatQuantity } from '../../shared-logic/units/convert'
import type { UnitSystem } from '../../shared-logic/units/quantity'
import type { Words } from '../../shared-logic/words/en'
import { say } from '../../shared-logic/words/say'
import { candidateOf, type Draft } from './draft'
import { rigGroups, type RigField } from './fields'

/** What is wrong, by dotted path: one sentence a field. */
export type Problems = Readonly<Record<string, string>>

export type ReadDraft = { readonly ok: true; readonly rig: Rig } | { readonly ok: false; readonly problems: Problems }

const fieldAt = new Map(rigGroups.flatMap((group) => group.fields).map((field): [string, RigField] => [field.path, field]))

const limitOf = (field: RigField | undefined, limit: number | bigint, units: UnitSystem): string => {
  if (field?.kind === 'quantity') return formatQuantity(field.quantity, Number(limit), units)
  if (field?.kind === 'tanks') return formatQuantity('volume', Number(limit), units)
  return String(limit)
}

const tankProblem = (path: string, issue: z.core.$ZodIssue, words: Words, units: UnitSystem): string => {
  const { problems } = words.screens.rig
  if (path.endsWith('contents')) return problems.tankContents
  if (issue.code === 'too_big') return say(problems.atMost, { limit: limitOf(fieldAt.get('boat.tanks'), issue.maximum, units) }, units)
  return problems.tankCapacity
}

const sentenceFor = (path: string, issue: z.core.$ZodIssue, words: Words, units: UnitSystem): string => {
  const { problems } = words.screens.rig
  const field = fieldAt.get(path)
  if (path.startsWith('boat.tanks.')) return tankProblem(path, issue, words, units)
  if (path === 'name' && issue.code !== 'too_big') return problems.needed
  if (issue.code === 'too_small') return say(issue.inclusive === true ? problems.atLeast : problems.moreThan, { limit: limitOf(field, issue.minimum, units) }, units)
  if (issue.code === 'too_big') return say(issue.origin === 'string' ? problems.tooLong : problems.atMost, { limit: limitOf(field, issue.maximum, units) }, units)
  return issue.code === 'invalid_format' ? problems.letter : problems.choose
}

/** The draft as a rig that may be saved, or what stands in the way. `unread` are fields whose text could not be read at all. */
export const readDraft = (draft: Draft, unread: Problems, words: Words, units: UnitSystem): ReadDraft => {
  const parsed = rigSchema.safeParse(candidateOf(draft))
  const refused = parsed.success ? [] : parsed.error.issues.map((issue): [string, string] => {
    const path = issue.path.join('.')
    return [path, sentenceFor(path, issue, words, units)]
  })
  const problems: Problems = { ...Object.fromEntries(refused), ...unread }
  return parsed.success && Object.keys(problems).length === 0 ? { ok: true, rig: parsed.data } : { ok: false, problems }
}
