import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http'
import { Refusal } from '../../shared-logic/contract/refusal'
import { en } from '../../shared-logic/words/en'
import { sayRefusal } from '../../shared-logic/words/say-refusal'
import { fileHeaders } from '../serving/served'
import { windowHeaders } from '../serving/headers'
import { letGo } from '../serving/let-go'
import { serveFile } from '../serving/serve-file'
import { answerRequest } from './api'
import { BodyReader } from '../serving/body'
import { Guard } from './guard'
import type { HostOptions } from './host-options'

export interface Host {
  /** What is printed: it opens the program for as long as the host runs. */
  readonly address: string
  /** Opens once, within a minute. */
  readonly addressForOnce: () => string
  readonly close: () => Promise<void>
}

const { turnedAway } = en.doors

const send = (response: ServerResponse, status: number, headers: Record<string, string>, body: string | Uint8Array, withBody: boolean): void => {
  response.writeHead(status, { ...windowHeaders, 'Content-Length': String(Buffer.byteLength(body)), ...headers })
  response.end(withBody ? body : undefined)
}

const sayText = (response: ServerResponse, status: number, text: string, headers: Record<string, string> = {}): void =>
  send(response, status, { 'Content-Type': 'text/plain; charset=utf-8', 'Cache-Control': 'no-store', ...headers }, text, true)

const say = (response: ServerResponse, status: number, why: keyof typeof turnedAway, headers: Record<string, string> = {}): void =>
  sayText(response, status, turnedAway[why], headers)

const sendJson = (request: IncomingMessage, response: ServerResponse, status: number, value: unknown): void => {
  const hangUp = !request.complete
  send(response, status, { 'Content-Type': 'application/json; charset=utf-8', 'Cache-Control': 'no-store', ...(hangUp && { Connection: 'close' }) }, JSON.stringify(value), true)
  letGo(request)
}

/** What one request meets, from the entrance inwards. */
interface Room {
  readonly options: HostOptions
  readonly guard: Guard
  readonly bodies: BodyReader
}

/** Trades the address's token for the cookie, and the address for one without the token. */
const enter = ({ guard, options }: Room, response: ServerResponse, token: string): void => {
  if (!guard.admits(token, options.now())) return say(response, 403, 'not admitted')
  return send(response, 303, { Location: '/', 'Set-Cookie': guard.cookie, 'Cache-Control': 'no-store' }, '', true)
}

/** A caller who has been let in: a call, or a file. */
const serve = async ({ options, bodies }: Room, request: IncomingMessage, response: ServerResponse, path: string): Promise<void> => {
  if (request.method === 'POST' && path.startsWith('api/')) {
    const answered = await answerRequest(options, bodies, request, path.slice('api/'.length))
    return sendJson(request, response, answered.status, answered.reply)
  }
  if (request.method !== 'GET' && request.method !== 'HEAD') return say(response, 405, 'no such method', { Allow: 'GET, HEAD', Connection: 'close' })
  const served = await serveFile(options.opened, options.rendererFolder, path)
  if (!served) return say(response, 404, 'no such page')
  return send(response, 200, fileHeaders(served), served.bytes, request.method === 'GET')
}

const handle = async (room: Room, request: IncomingMessage, response: ServerResponse): Promise<void> => {
  const { guard } = room
  if (guard.hostTrouble(request)) return say(response, 421, 'not our address', { Connection: 'close' })
  const asked = request.url?.startsWith('/') === true ? URL.parse(`http://127.0.0.1${request.url}`) : null
  if (!asked) return say(response, 400, 'no such page')
  const token = asked.searchParams.get('token')
  if (asked.pathname === '/' && token !== null && request.method === 'GET') return enter(room, response, token)
  const trouble = guard.callerTrouble(request)
  if (trouble) return say(response, 403, trouble, { Connection: 'close' })
  return serve(room, request, response, asked.pathname.slice(1))
}

/** A fault of ours is told to the terminal; a file that cannot be handed over is said in a sentence, for a person opened its address. */
const answerFault = (options: HostOptions, fault: unknown, request: IncomingMessage, response: ServerResponse): void => {
  if (response.headersSent) {
    response.destroy()
    return
  }
  if (fault instanceof Refusal) return sayText(response, 422, sayRefusal(en, fault.data))
  options.onFault(fault)
  return sendJson(request, response, 500, { ok: false, refusal: { code: 'program.fault' } })
}

/** Slow and many callers are bounded: 10 s for headers, 2 minutes for a body, 64 lines at once, none of them silent for long. */
const bound = (server: Server): void => {
  server.headersTimeout = 10_000
  server.requestTimeout = 120_000
  server.keepAliveTimeout = 5_000
  server.maxConnections = 64
  server.maxHeadersCount = 60
  server.setTimeout(130_000)
}

const listening = (server: Server, port: number): Promise<number> =>
  new Promise((resolve, reject) => {
    server.once('error', reject)
    server.listen({ host: '127.0.0.1', port, exclusive: true }, () => {
      const address = server.address()
      if (address === null || typeof address === 'string') reject(new Error('no port'))
      else resolve(address.port)
    })
  })

const closing = (server: Server): Promise<void> =>
  new Promise((resolve) => {
    server.close(() => resolve())
    server.closeIdleConnections()
    setTimeout(() => server.closeAllConnections(), 2_000).unref()
  })

/** Serves the program on 127.0.0.1 alone. Rejects when the port is taken. */
export const startHost = async (options: HostOptions): Promise<Host> => {
  const server = createServer({ maxHeaderSize: 32_768, connectionsCheckingInterval: 2_000 })
  bound(server)
  const guard = new Guard(await listening(server, options.port))
  const room: Room = { options, guard, bodies: new BodyReader() }
  server.on('request', (request, response) => void handle(room, request, response).catch((fault: unknown) => answerFault(options, fault, request, response)))
  return { address: guard.address, addressForOnce: () => guard.addressForOnce(options.now()), close: () => closing(server) }
}
