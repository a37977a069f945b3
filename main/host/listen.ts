import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http'
import { en } from '../../shared-logic/words/en'
import type { OpenedDesk } from '../desk/open'
import { fileHeaders } from '../serving/served'
import { safeHeaders } from '../serving/headers'
import { serveFile } from '../serving/serve-file'
import { answerRequest } from './api'
import { BodyReader } from './body'
import { Guard } from './guard'

export interface HostOptions {
  readonly opened: OpenedDesk
  /** The built window. */
  readonly rendererFolder: string
  /** 0: the system chooses. */
  readonly port: number
  /** Told of a fault inside, for the terminal; the caller is told nothing of it. */
  readonly onFault: (fault: unknown) => void
  readonly now: () => number
}

export interface Host {
  /** What is printed: it opens the program for as long as the host runs. */
  readonly address: string
  /** Opens once, within a minute. */
  readonly addressForOnce: () => string
  readonly close: () => Promise<void>
}

const { turnedAway } = en.doors

const send = (response: ServerResponse, status: number, headers: Record<string, string>, body: string | Uint8Array, withBody: boolean): void => {
  response.writeHead(status, { ...safeHeaders, 'Content-Length': String(Buffer.byteLength(body)), ...headers })
  response.end(withBody ? body : undefined)
}

const say = (response: ServerResponse, status: number, why: keyof typeof turnedAway, headers: Record<string, string> = {}): void =>
  send(response, status, { 'Content-Type': 'text/plain; charset=utf-8', 'Cache-Control': 'no-store', ...headers }, turnedAway[why], true)

/** What is still being sent is read away for a while, so that the answer is heard, and then the line is cut. */
const letGo = (request: IncomingMessage): void => {
  if (request.complete) return
  request.resume()
  setTimeout(() => request.destroy(), 5_000).unref()
}

const sendJson = (request: IncomingMessage, response: ServerResponse, status: number, value: unknown): void => {
  const hangUp = !request.complete
  send(response, status, { 'Content-Type': 'application/json; charset=utf-8', 'Cache-Control': 'no-store', ...(hangUp && { Connection: 'close' }) }, JSON.stringify(value), true)
  letGo(request)
}

/** One request through entrance, guard, calls and files, in that order. */
const handle = async (options: HostOptions, guard: Guard, bodies: BodyReader, request: IncomingMessage, response: ServerResponse): Promise<void> => {
  if (guard.hostTrouble(request)) return say(response, 421, 'not our address', { Connection: 'close' })
  const asked = request.url?.startsWith('/') === true ? URL.parse(`http://127.0.0.1${request.url}`) : null
  if (!asked) return say(response, 400, 'no such page')
  const token = asked.searchParams.get('token')
  if (asked.pathname === '/' && token !== null && request.method === 'GET') {
    if (!guard.admits(token, options.now())) return say(response, 403, 'not admitted')
    return send(response, 303, { Location: '/', 'Set-Cookie': guard.cookie, 'Cache-Control': 'no-store' }, '', true)
  }
  const trouble = guard.callerTrouble(request)
  if (trouble) return say(response, 403, trouble, { Connection: 'close' })
  const path = asked.pathname.slice(1)
  if (request.method === 'POST' && path.startsWith('api/')) {
    const answered = await answerRequest(options.opened, bodies, request, path.slice('api/'.length))
    return sendJson(request, response, answered.status, answered.reply)
  }
  if (request.method !== 'GET' && request.method !== 'HEAD') return say(response, 405, 'no such method', { Allow: 'GET, HEAD', Connection: 'close' })
  const served = await serveFile(options.opened, options.rendererFolder, path)
  if (!served) return say(response, 404, 'no such page')
  send(response, 200, fileHeaders(served), served.bytes, request.method === 'GET')
}

/** Slow and many callers are bounded: 10 s for headers, 2 minutes for a body, 64 lines at once. */
const bound = (server: Server): void => {
  server.headersTimeout = 10_000
  server.requestTimeout = 120_000
  server.keepAliveTimeout = 5_000
  server.maxConnections = 64
  server.maxHeadersCount = 60
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
  const bodies = new BodyReader()
  let guard: Guard | undefined
  const server = createServer({ maxHeaderSize: 32_768, connectionsCheckingInterval: 2_000 }, (request, response) => {
    if (!guard) return void response.destroy()
    handle(options, guard, bodies, request, response).catch((fault: unknown) => {
      options.onFault(fault)
      if (response.headersSent) response.destroy()
      else sendJson(request, response, 500, { ok: false, refusal: { code: 'program.fault' } })
    })
  })
  bound(server)
  const own = new Guard(await listening(server, options.port))
  guard = own
  return { address: own.address, addressForOnce: () => own.addressForOnce(options.now()), close: () => closing(server) }
}
