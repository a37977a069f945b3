import type { z } from 'zod'
import type { RefusalData } from '../../shared-logic/contract/refusal'
import { formatQuantity } from '../../shared-logic/units/convert'
import { quantityOf } from '../../shared-logic/units/written-file'

type Issue = z.core.$ZodIssue

/** How much an issue of a union's branch tells: deeper is better, and a broken bound says more than a wrong type. */
const telling = (issue: Issue | undefined): number => (issue === undefined ? 0 : issue.path.length + (issue.code === 'invalid_type' ? 0 : 0.5))

/** The most telling issue of a union's branches, so that the sentence names the field rather than the whole. */
const innermost = (issue: Issue): Issue => {
  if (issue.code !== 'invalid_union') return issue
  const [inner] = issue.errors.flatMap((branch) => branch.slice(0, 1)).toSorted((a, b) => telling(b) - telling(a))
  return inner === undefined || telling(inner) === 0 ? issue : innermost({ ...inner, path: [...issue.path, ...inner.path] })
}

/** A bound as a person reads it: fields carry their SI unit in their name, and the door does not know the reader's units. */
const sayLimit = (path: Issue['path'], limit: number): string | number => {
  const quantity = quantityOf(String(path.at(-1) ?? ''))
  if (quantity === undefined) return limit
  const [metric, us] = [formatQuantity(quantity, limit, 'metric', 'fine'), formatQuantity(quantity, limit, 'us', 'fine')]
  return metric === us ? metric : `${metric} (${us})`
}

const typeCodes: Readonly<Record<string, string>> = {
  string: 'field.not-text', number: 'field.not-a-number', int: 'field.not-whole', boolean: 'field.not-yes-or-no', array: 'field.not-a-list', object: 'field.not-a-record', record: 'field.not-a-record',
}

const isMissing = (issue: Issue): boolean => issue.input === undefined || issue.input === null

const ofType = (issue: Issue, expected: string): Pick<RefusalData, 'code' | 'values'> =>
  isMissing(issue) ? { code: 'field.missing' } : { code: typeCodes[expected] ?? 'field.invalid' }

const ofBound = (issue: Extract<Issue, { code: 'too_small' | 'too_big' }>): Pick<RefusalData, 'code' | 'values'> => {
  const small = issue.code === 'too_small'
  const limit = Number(small ? issue.minimum : issue.maximum)
  if (issue.origin === 'string') return small ? { code: 'field.empty' } : { code: 'field.too-long', values: { limit } }
  if (issue.origin === 'array' || issue.origin === 'set') return { code: small ? 'field.too-few' : 'field.too-many', values: { limit } }
  if (small && limit === 0 && issue.inclusive !== true) return { code: 'field.not-above-zero' }
  return { code: small ? 'field.too-small' : 'field.too-large', values: { limit: sayLimit(issue.path, limit) } }
}

const formats: Readonly<Record<string, string>> = { date: 'field.not-a-date', datetime: 'field.not-a-time', uuid: 'field.not-an-id' }

const describe = (issue: Issue): Pick<RefusalData, 'code' | 'values'> => {
  switch (issue.code) {
    case 'invalid_type':
      return ofType(issue, issue.expected)
    case 'too_small':
    case 'too_big':
      return ofBound(issue)
    case 'invalid_format':
      return { code: formats[issue.format] ?? 'field.wrong-form' }
    case 'invalid_value':
      return isMissing(issue) ? { code: 'field.missing' } : { code: 'field.not-a-choice', values: { choices: issue.values.map(String).join(', ') } }
    case 'invalid_union':
      return isMissing(issue) ? { code: 'field.missing' } : { code: 'field.invalid' }
    case 'unrecognized_keys':
      return { code: 'field.unknown' }
    case 'custom':
    case 'invalid_element':
    case 'invalid_key':
    case 'not_multiple_of':
      return { code: 'field.invalid' }
  }
}

/** The refusal for the first thing the contract's schema found wrong, its field in dotted form: 'rig.trailer.massKg'. */
export const refusalOfIssues = (issues: readonly Issue[]): RefusalData => {
  const [first] = issues
  if (!first) return { code: 'field.invalid' }
  const issue = innermost(first)
  const field = issue.path.map(String).join('.')
  return { ...describe(issue), ...(field !== '' && { field }) }
}
