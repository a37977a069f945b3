import type { IncomingMessage, ServerResponse } from 'node:http'
import { TLSSocket } from 'node:tls'
import type { RefusalData } from '../../shared-logic/contract/refusal'
import { en } from '../../shared-logic/words/en'
import { sayRefusal } from '../../shared-logic/words/say-refusal'
import { safeHeaders } from '../serving/headers'
import { letGo } from '../serving/let-go'

/** A refusal on its way to the phone; thrown anywhere on the way in. */
export class PhoneRefusal extends Error {
  override readonly name = 'PhoneRefusal'
  constructor(readonly status: number, readonly refusal: RefusalData) {
    super(refusal.code)
  }
}

export const turnAway = (status: number, code: string, values?: RefusalData['values']): never => {
  throw new PhoneRefusal(status, { code, ...(values && { values }) })
}

/** A browser takes this one over HTTPS alone, and complains of it elsewhere. */
const { 'Cross-Origin-Opener-Policy': openerPolicy = '', ...plainHeaders } = safeHeaders
const headersFor = ({ req }: ServerResponse): Readonly<Record<string, string>> =>
  req.socket instanceof TLSSocket ? { ...plainHeaders, 'Cross-Origin-Opener-Policy': openerPolicy } : plainHeaders

export const send = (response: ServerResponse, status: number, headers: Readonly<Record<string, string>>, body: string | Uint8Array, withBody: boolean): void => {
  if (response.headersSent || response.destroyed) return
  response.writeHead(status, { ...headersFor(response), 'Content-Length': String(Buffer.byteLength(body)), ...headers })
  response.end(withBody ? body : undefined)
}

export const sendJson = (request: IncomingMessage, response: ServerResponse, status: number, value: unknown, headers: Readonly<Record<string, string>> = {}): void => {
  const hangUp = status >= 400 && request.complete
  send(response, status, { 'Content-Type': 'application/json; charset=utf-8', 'Cache-Control': 'no-store', ...headers, ...(hangUp && { Connection: 'close' }) }, JSON.stringify(value), request.method !== 'HEAD')
  letGo(request)
}

export const sendRefusal = (request: IncomingMessage, response: ServerResponse, { status, refusal }: PhoneRefusal): void =>
  sendJson(request, response, status, { refusal, sentence: sayRefusal(en, refusal) })
