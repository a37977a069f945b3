import type { Survey } from '../survey/records'

/** Hashes of the pictures that spots were measured on: they are printed whatever became of the photograph. */
export const measuredOn = ({ answers }: Pick<Survey, 'answers'>): Set<string> =>
  new Set(answers.flatMap(({ answer }) => Object.values(answer.values).flatMap((value) => (Array.isArray(value) ? value.flatMap(({ measurement }) => measurement?.sha256 ?? []) : []))))
