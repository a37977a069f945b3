import type { IncomingMessage } from 'node:http'
import { contract, procedureNames, type ProcedureName } from '../../shared-logic/contract/contract'
import { inputHeader, type Reply } from '../../shared-logic/contract/reply'
import { answerCall } from '../desk/answer-call'
import type { HostOptions } from './host-options'
import { fileLimitBytes, jsonLimitBytes, type Body, type BodyReader } from '../serving/body'

/** A reply with the HTTP status that goes with it. */
export interface Answered {
  readonly status: number
  readonly reply: Reply
}

const refused = (status: number, code: string, values?: Record<string, string | number>): Answered => ({
  status,
  reply: { ok: false, refusal: { code, ...(values && { values }) } },
})

const bodyTrouble = (why: Extract<Body, { ok: false }>['why'], limitBytes: number): Answered => {
  switch (why) {
    case 'no length':
      return refused(411, 'door.no-length')
    case 'too large':
      return refused(413, 'door.too-large', { limit: limitBytes / 1_000_000 })
    case 'busy':
      return refused(503, 'door.busy')
    case 'broken off':
      return refused(400, 'door.broken-off')
  }
}

const parsed = (read: () => string): { readonly ok: true; readonly value: unknown } | { readonly ok: false } => {
  try {
    return { ok: true, value: JSON.parse(read()) }
  } catch {
    return { ok: false }
  }
}

const strictText = new TextDecoder('utf-8', { fatal: true })

const inputOf = (request: IncomingMessage, carriesBytes: boolean, bytes: Uint8Array): ReturnType<typeof parsed> => {
  const header = request.headers[inputHeader]
  return parsed(() => (carriesBytes ? decodeURIComponent(typeof header === 'string' ? header : '') : strictText.decode(bytes)))
}

const typeTrouble = (request: IncomingMessage, carriesBytes: boolean): boolean =>
  (request.headers['content-type'] ?? '').split(';')[0]?.trim() !== (carriesBytes ? 'application/octet-stream' : 'application/json')

const isProcedure = (name: string): name is ProcedureName => procedureNames.some((known) => known === name)

/** Answers one `POST api/<procedure>`: the body bounded, read and parsed, the call handed to the desk. */
export const answerRequest = async ({ opened, onFault }: Pick<HostOptions, 'opened' | 'onFault'>, bodies: BodyReader, request: IncomingMessage, name: string): Promise<Answered> => {
  if (!isProcedure(name)) return refused(404, 'door.no-procedure', { procedure: name.slice(0, 80) })
  const { carriesBytes } = contract[name]
  if (typeTrouble(request, carriesBytes)) return refused(415, 'door.not-json')
  const limitBytes = carriesBytes ? fileLimitBytes : jsonLimitBytes
  const body = await bodies.read(request, limitBytes)
  if (!body.ok) return bodyTrouble(body.why, limitBytes)
  const input = inputOf(request, carriesBytes, body.bytes)
  if (!input.ok) return refused(400, 'door.not-json')
  const reply = await answerCall(opened.desk, name, input.value, carriesBytes ? body.bytes : undefined, onFault)
  return { status: reply.ok ? 200 : 422, reply }
}
