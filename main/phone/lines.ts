import type { IncomingMessage, Server, ServerResponse } from 'node:http'
import type { Socket } from 'node:net'
import { Allowance } from './allowance'

/** Of all strangers together. The phone that was let in does not stand in their row. */
const mostLinesOfStrangers = 64
/** A phone's browser holds six; another machine that holds many does not keep the phone out. */
const mostLinesOfOne = 12

/** Each line begun costs a little, an encrypted one more: so many at once from one address, and so many a second. */
const newLinesAtOnce = 200
const newLinesPerSecond = 20
/** From ever new addresses no more than so many times that. */
const strangersTogether = 5

/** Ends every line, those too that have not yet said anything. */
export type CutLines = () => void

/** Whether the paired phone speaks from an address. */
type IsPhone = (address: string) => boolean

/** The lines that are open, the oldest first, each with the address it comes from. */
class OpenLines {
  readonly #open = new Map<Socket, string>()

  constructor(private readonly isPhone: IsPhone) {}

  /** False where one address would hold too many. Where strangers hold too many together the oldest of their lines is cut: who only holds them does not keep a newcomer out. */
  add(socket: Socket, from: string): boolean {
    const all = [...this.#open]
    if (all.filter(([, each]) => each === from).length >= mostLinesOfOne) return false
    const strangers = this.isPhone(from) ? [] : all.filter(([, each]) => !this.isPhone(each))
    if (strangers.length >= mostLinesOfStrangers) strangers[0]?.[0].destroy()
    this.#open.set(socket, from)
    socket.once('close', () => this.#open.delete(socket))
    return true
  }

  cut(): void {
    for (const socket of this.#open.keys()) socket.destroy()
  }
}

/** Bounds a server on a network that others share: headers within 10 s, a body within 10 minutes, and few lines, of one address fewer still and not ever new ones. */
export const boundLines = (server: Server, isPhone: IsPhone, now: () => number): CutLines => {
  const phonesLines = new Allowance(newLinesAtOnce, newLinesPerSecond)
  const strangersLines = new Allowance(newLinesAtOnce, newLinesPerSecond, strangersTogether)
  server.headersTimeout = 10_000
  server.requestTimeout = 600_000
  server.keepAliveTimeout = 5_000
  server.maxHeadersCount = 60
  server.setTimeout(60_000)
  const open = new OpenLines(isPhone)
  server.on('connection', (socket: Socket) => {
    const from = socket.remoteAddress ?? ''
    const allowance = isPhone(from) ? phonesLines : strangersLines
    if (!allowance.take(from, now()) || !open.add(socket, from)) socket.destroy()
  })
  return () => open.cut()
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
