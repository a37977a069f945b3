import type { InputOf, OutputOf, ProcedureName } from '../../shared-logic/contract/contract'
import { Refusal } from '../../shared-logic/contract/refusal'
import { inputHeader, replySchema, type Reply } from '../../shared-logic/contract/reply'

/** What the preload puts into the window of the desktop program. */
interface Bridge {
  readonly call: (name: ProcedureName, input: unknown, bytes?: Uint8Array) => Promise<unknown>
}

declare global {
  interface Window {
    readonly bunkwright?: Bridge
  }
}

export interface CallOptions {
  /** One file's bytes, for the procedures that carry one. */
  readonly bytes?: Uint8Array<ArrayBuffer>
  readonly signal?: AbortSignal
}

const askOverHttp = async (name: ProcedureName, input: unknown, { bytes, signal }: CallOptions): Promise<unknown> => {
  const written = JSON.stringify(input)
  const request: RequestInit = bytes
    ? { body: bytes, headers: { 'content-type': 'application/octet-stream', [inputHeader]: encodeURIComponent(written) } }
    : { body: written, headers: { 'content-type': 'application/json' } }
  const response = await fetch(`api/${name}`, { method: 'POST', ...request, ...(signal && { signal }) })
  const answer: unknown = await response.json()
  return answer
}

const ask = async (name: ProcedureName, input: unknown, options: CallOptions): Promise<Reply> => {
  const bridge = window.bunkwright
  try {
    const answer = await (bridge ? bridge.call(name, input, options.bytes) : askOverHttp(name, input, options))
    return replySchema.parse(answer)
  } catch {
    options.signal?.throwIfAborted()
    throw new Refusal({ code: 'door.no-answer', values: { procedure: name } })
  }
}

/**
 * Asks the desk, through whichever door this window has. Answers the procedure's output.
 * Throws `Refusal` when the desk refuses or does not answer, and the signal's reason when it was aborted.
 */
export const call = async <Name extends ProcedureName>(name: Name, input: InputOf<Name>, options: CallOptions = {}): Promise<OutputOf<Name>> => {
  options.signal?.throwIfAborted()
  const reply = await ask(name, input, options)
  options.signal?.throwIfAborted()
  if (!reply.ok) throw new Refusal(reply.refusal)
  // The desk has parsed it by the same contract, and both come from one build.
  // oxlint-disable-next-line typescript/no-unsafe-type-assertion
  return reply.value as OutputOf<Name>
}
