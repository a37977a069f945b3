import type { IncomingMessage, Server, ServerResponse } from 'node:http'
import type { Socket } from 'node:net'
import { Allowance } from './allowance'

const mostLines = 64
/** A phone's browser holds six; another machine that holds many does not keep the phone out. */
const mostLinesOfOne = 12

/** Ends every line, those too that have not yet said anything. */
export type CutLines = () => void

/** Each line begun costs a little, an encrypted one more: so many at once from one address, and so many a second. */
const newLinesAtOnce = 200
const newLinesPerSecond = 20

/** Bounds a server on a network that others share: headers within 10 s, a body within 10 minutes, and few lines, of one address fewer still and not ever new ones. */
export const boundLines = (server: Server, now: () => number): CutLines => {
  const newLines = new Allowance(newLinesAtOnce, newLinesPerSecond)
  server.headersTimeout = 10_000
  server.requestTimeout = 600_000
  server.keepAliveTimeout = 5_000
  server.maxConnections = mostLines
  server.maxHeadersCount = 60
  server.setTimeout(60_000)
  const held = new Map<string, number>()
  const open = new Set<Socket>()
  server.on('connection', (socket: Socket) => {
    const from = socket.remoteAddress ?? ''
    const count = (held.get(from) ?? 0) + 1
    if (!newLines.take(from, now()) || count > mostLinesOfOne) {
      socket.destroy()
      return
    }
    held.set(from, count)
    open.add(socket)
    socket.once('close', () => {
      open.delete(socket)
      const left = (held.get(from) ?? 1) - 1
      if (left === 0) held.delete(from)
      else held.set(from, left)
    })
  })
  return () => {
    for (const socket of open) socket.destroy()
  }
}

/**
 * One request after the other on a line, as every browser asks: a thousand asked in one breath would each be answered
 * into memory before the first answer is fetched. Who asks so is cut off.
 */
export const inTurnOnALine = (answer: (request: IncomingMessage, response: ServerResponse) => void) => {
  const answering = new WeakSet<Socket>()
  return (request: IncomingMessage, response: ServerResponse): void => {
    const { socket } = request
    if (answering.has(socket) || socket.destroyed) {
      socket.destroy()
      return
    }
    answering.add(socket)
    response.once('close', () => answering.delete(socket))
    answer(request, response)
  }
}

/**
 * The same port at every opening: a phone's browser finds at the next door what it could not send through the last, and
 * a firewall needs one rule. Source: RFC 6335, section 6 (dynamic ports, assigned to nobody).
 */
const usualPort = 52_480

const listenOn = (server: Server, host: string, port: number): Promise<number> =>
  new Promise((resolve, reject) => {
    server.once('error', reject)
    server.listen({ host, port, exclusive: true }, () => {
      server.off('error', reject)
      const address = server.address()
      if (address === null || typeof address === 'string') reject(new Error('no port'))
      else resolve(address.port)
    })
  })

/** At the port of the last door, else at the usual one, else at any. */
export const listening = (server: Server, host: string, lastPort = usualPort): Promise<number> =>
  listenOn(server, host, lastPort).catch(() => listenOn(server, host, usualPort)).catch(() => listenOn(server, host, 0))

const takenForMs = 2_000
/** A phone asks every five seconds while someone looks at it. */
const toldForMs = 12_000

export interface Closing {
  readonly ended: Promise<void>
  /** Ends it now. */
  readonly cut: () => void
}

/** Lets what is being taken be taken for a moment, and whoever asks be told for a little longer; then there is no door. */
export const closing = (server: Server, cutLines: CutLines): Closing => {
  const { promise, resolve } = Promise.withResolvers<void>()
  const moment = setTimeout(() => server.closeAllConnections(), takenForMs).unref()
  const cut = (): void => {
    clearTimeout(moment)
    clearTimeout(telling)
    server.close(() => resolve())
    // The server itself knows no line on which encryption was never begun, and would wait for it.
    cutLines()
  }
  const telling = setTimeout(cut, toldForMs).unref()
  return { ended: promise, cut }
}
