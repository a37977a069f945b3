import type { IncomingMessage } from 'node:http'
import { contract, procedureNames, type ProcedureName } from '../../shared-logic/contract/contract'
import type { Reply } from '../../shared-logic/contract/reply'
import { answerCall } from '../desk/answer-call'
import { bodyRefusal, fileLimitBytes, jsonLimitBytes, type BodyReader } from '../serving/body'
import { hasType, jsonInBody, jsonInHeader } from '../serving/request-json'
import type { HostOptions } from './host-options'

/** A reply with the HTTP status that goes with it. */
export interface Answered {
  readonly status: number
  readonly reply: Reply
}

const refused = (status: number, code: string, values?: Record<string, string | number>): Answered => ({
  status,
  reply: { ok: false, refusal: { code, ...(values && { values }) } },
})

const isProcedure = (name: string): name is ProcedureName => procedureNames.some((known) => known === name)

/** Answers one `POST api/<procedure>`: the body bounded, read and parsed, the call handed to the desk. */
export const answerRequest = async ({ opened, onFault }: Pick<HostOptions, 'opened' | 'onFault'>, bodies: BodyReader, request: IncomingMessage, name: string): Promise<Answered> => {
  if (!isProcedure(name)) return refused(404, 'door.no-procedure', { procedure: name.slice(0, 80) })
  const { carriesBytes } = contract[name]
  if (!hasType(request, carriesBytes ? 'application/octet-stream' : 'application/json')) return refused(415, 'door.not-json')
  const limitBytes = carriesBytes ? fileLimitBytes : jsonLimitBytes
  const body = await bodies.read(request, limitBytes)
  if (!body.ok) {
    const { status, refusal } = bodyRefusal(body.why, limitBytes)
    return { status, reply: { ok: false, refusal } }
  }
  const input = carriesBytes ? jsonInHeader(request) : jsonInBody(body.bytes)
  if (!input.ok) return refused(400, 'door.not-json')
  const reply = await answerCall(opened.desk, name, input.value, carriesBytes ? body.bytes : undefined, onFault)
  return { status: reply.ok ? 200 : 422, reply }
}
