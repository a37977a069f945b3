import type { z } from 'zod'
import { Refusal, refuse, type RefusalData } from '../../shared-logic/contract/refusal'
import { readUnits, unknownField } from '../../shared-logic/units/written-file'
import { en } from '../../shared-logic/words/en'
import { sayField } from '../../shared-logic/words/say-refusal'
import { refusalOfIssues } from '../desk/input-refusal'
import type { Given } from './command'
import { readJsonFile } from './read-json-file'

/** A kind of file a person may write with units, as `schema` names it. */
export type WrittenKind = 'sums' | 'grade'

/** Names the field by its label and by where it stands in the file. */
const naming = ({ code, values, field }: RefusalData, file: string): RefusalData => {
  const named = field === undefined ? file : `${sayField(en, field)} (${field})`
  return { code, values: { ...values, field: named }, ...(field !== undefined && { field }) }
}

const unknown = (field: string, kind: WrittenKind): never => refuse('file.unknown-field', { kind }, field)

const checked = <Schema extends z.ZodType>(value: unknown, schema: Schema, kind: WrittenKind): z.output<Schema> => {
  const read = readUnits(value)
  const result = schema.safeParse(read, { reportInput: true })
  if (!result.success) {
    const [issue] = result.error.issues
    if (issue?.code !== 'unrecognized_keys') throw new Refusal(refusalOfIssues(result.error.issues))
    return unknown([...issue.path.map(String), issue.keys[0] ?? ''].join('.'), kind)
  }
  const misspelt = unknownField(read, result.data)
  return misspelt === undefined ? result.data : unknown(misspelt, kind)
}

/** Reads a JSON file whose quantities may carry units, and does `work` with it; every refusal names the field by label and path. */
export const withWrittenFile = async <Schema extends z.ZodType, Result>(
  named: string, given: Given, { schema, kind }: { readonly schema: Schema; readonly kind: WrittenKind }, work: (file: z.output<Schema>) => Result,
): Promise<Result> => {
  const value = await readJsonFile(named, given)
  try {
    return work(checked(value, schema, kind))
  } catch (fault) {
    if (fault instanceof Refusal) throw new Refusal(naming(fault.data, named), { cause: fault })
    throw fault
  }
}
