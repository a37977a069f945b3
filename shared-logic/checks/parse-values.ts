import { assertNever } from '../assert-never'
import type { FieldValue, FieldValues } from '../survey/answer'
import type { Check, Field } from './check'

/** What was wrong with one field of an answer; its sentence stands in the words under `refusals`. */
export interface FieldProblem {
  readonly field: string
  readonly code:
    | 'answer.unknown-field' | 'answer.not-an-option' | 'answer.not-a-number' | 'answer.below' | 'answer.above'
    | 'answer.not-whole' | 'answer.not-text' | 'answer.not-a-date' | 'answer.in-the-future' | 'answer.not-spots' | 'answer.share-over-whole' | 'answer.pit-over-wall' | 'corrosion.remaining-over-wall'
  readonly limitSi?: number
}

const isoDate = /^\d{4}-(0[1-9]|1[0-2])-(0[1-9]|[12]\d|3[01])$/

const bounds = (field: string, value: FieldValue, min: number, max: number): FieldProblem | undefined => {
  if (typeof value !== 'number' || !Number.isFinite(value)) return { field, code: 'answer.not-a-number' }
  if (value < min) return { field, code: 'answer.below', limitSi: min }
  if (value > max) return { field, code: 'answer.above', limitSi: max }
  return undefined
}

const problemOf = (field: Field, value: FieldValue, surveyDate: string): FieldProblem | undefined => {
  switch (field.kind) {
    case 'choice':
      return typeof value === 'string' && field.options.includes(value) ? undefined : { field: field.id, code: 'answer.not-an-option' }
    case 'reading':
      return bounds(field.id, value, field.min, field.max)
    case 'count':
      return Number.isInteger(value) || typeof value !== 'number' ? bounds(field.id, value, field.min, field.max) : { field: field.id, code: 'answer.not-whole' }
    case 'text':
      return typeof value === 'string' && value.trim() !== '' && value.length <= field.maxLength ? undefined : { field: field.id, code: 'answer.not-text', limitSi: field.maxLength }
    case 'date':
      if (typeof value !== 'string' || !isoDate.test(value)) return { field: field.id, code: 'answer.not-a-date' }
      return value > surveyDate ? { field: field.id, code: 'answer.in-the-future' } : undefined
    case 'spots':
      if (!Array.isArray(value)) return { field: field.id, code: 'answer.not-spots' }
      if (value.some((spot) => spot.areaM2 !== undefined && spot.faceAreaM2 !== undefined && spot.areaM2 > spot.faceAreaM2)) return { field: field.id, code: 'answer.share-over-whole' }
      if (value.some((spot) => spot.pitDepthM !== undefined && spot.wallM !== undefined && spot.pitDepthM > spot.wallM)) return { field: field.id, code: 'answer.pit-over-wall' }
      if (value.some((spot) => spot.remainingM !== undefined && spot.wallM !== undefined && spot.remainingM > spot.wallM)) return { field: field.id, code: 'corrosion.remaining-over-wall' }
      return undefined
    default:
      return assertNever(field)
  }
}

/** The problems of an answer's values against its check's fields; none means it may be judged and kept. */
export const problemsOf = (check: Check, values: FieldValues, surveyDate: string): FieldProblem[] =>
  Object.entries(values).flatMap(([id, value]): FieldProblem[] => {
    if (value === undefined) return []
    const field = check.fields.find((candidate) => candidate.id === id)
    if (!field) return [{ field: id, code: 'answer.unknown-field' }]
    const problem = problemOf(field, value, surveyDate)
    return problem ? [problem] : []
  })
