import type { z } from 'zod'
import type { RefusalData } from '../../shared-logic/contract/refusal'

type Issue = z.core.$ZodIssue

/** The deepest issue of a union's most fitting branch, so that the sentence names the field rather than the whole. */
const innermost = (issue: Issue): Issue => {
  if (issue.code !== 'invalid_union') return issue
  const [branch] = issue.errors.toSorted((a, b) => (b[0]?.path.length ?? 0) - (a[0]?.path.length ?? 0))
  const inner = branch?.[0]
  return inner === undefined || inner.path.length === 0 ? issue : innermost({ ...inner, path: [...issue.path, ...inner.path] })
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
  if (small) return limit === 0 && issue.inclusive !== true ? { code: 'field.not-above-zero' } : { code: 'field.too-small', values: { limit } }
  return { code: 'field.too-large', values: { limit } }
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
