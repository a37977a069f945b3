import { contract, type Desk, type ProcedureName } from '../../shared-logic/contract/contract'
import { Refusal } from '../../shared-logic/contract/refusal'
import type { Reply } from '../../shared-logic/contract/reply'
import { refusalOfIssues } from './input-refusal'

const isProcedure = (name: unknown): name is ProcedureName => typeof name === 'string' && Object.hasOwn(contract, name)

const refused = (refusal: Refusal['data']): Reply => ({ ok: false, refusal })

const call = async (desk: Desk, name: ProcedureName, input: unknown, bytes: Uint8Array | undefined): Promise<Reply> => {
  const parsed = contract[name].input.safeParse(input, { reportInput: true })
  if (!parsed.success) return refused(refusalOfIssues(parsed.error.issues))
  // TypeScript cannot follow that `name` picks schema and procedure together; the contract's types do.
  const procedure: (input: never, bytes?: Uint8Array) => Promise<unknown> = desk[name]
  return { ok: true, value: await procedure(parsed.data as never, contract[name].carriesBytes ? bytes : undefined) }
}

/**
 * Answers one call from a door. The input is parsed once, here, by the contract; whatever goes wrong comes back as a
 * refusal with code, field and values. A fault of ours is 'program.fault' with nothing of its inside; `onFault` is told.
 */
export const answerCall = async (desk: Desk, name: unknown, input: unknown, bytes?: Uint8Array, onFault: (fault: unknown) => void = console.error): Promise<Reply> => {
  if (!isProcedure(name)) return refused({ code: 'door.no-procedure', values: { procedure: String(name).slice(0, 80) } })
  try {
    return await call(desk, name, input, bytes)
  } catch (error) {
    if (error instanceof Refusal) return refused(error.data)
    onFault(error)
    return refused({ code: 'program.fault' })
  }
}
