import { z } from 'zod'

/** A number, word or name for a gap of a refusal's sentence. */
const gapSchema = z.union([z.string(), z.number()])

/**
 * Why a request was refused, as data: the sentence stands in `words/en/refusals`, keyed by `code`.
 * `field` names the input field in dotted form where there is one.
 */
export const refusalSchema = z.object({
  code: z.string(),
  field: z.string().optional(),
  values: z.record(z.string(), gapSchema).optional(),
})
export type RefusalData = z.infer<typeof refusalSchema>

/** Thrown at a door or in the desk when input cannot be taken; nothing has been written then. */
export class Refusal extends Error {
  override readonly name = 'Refusal'
  constructor(readonly data: RefusalData, options?: ErrorOptions) {
    super(data.code, options)
  }
}

export const refuse = (code: string, values?: RefusalData['values'], field?: string): never => {
  throw new Refusal({ code, ...(values && { values }), ...(field !== undefined && { field }) })
}
