import type { IncomingMessage, Server, ServerResponse } from 'node:http'
import type { Socket } from 'node:net'
import { Allowance } from './allowance'

/** Of all strangers together. The phone that was let in does not stand in their row. */
const mostLinesOfStrangers = 64
/** A phone's browser holds six, and another machine may stand behind the same address. */
const mostLinesOfOne = 12
/** A phone asks every five seconds while someone looks at it: its line outlasts that, and need not be begun anew. */
const idleForMs = 12_000

/** Each line begun costs a little, an encrypted one more: so many at once from one address, and so many a second. */
const newLinesAtOnce = 200
const newLinesPerSecond = 20
/** From ever new addresses no more than so many times that. */
const strangersTogether = 5

/** Whether the paired phone speaks from an address. */
type IsPhone = (address: string) => boolean

interface Line {
  readonly socket: Socket
  readonly from: string
  /** The paired phone was heard on it. */
  isPhones: boolean
}

/** Where a line comes from, to the port: the socket that was accepted and the encrypted one upon it have it in common. */
const endOf = ({ remoteAddress = '', remotePort = 0 }: Socket): string => `${remoteAddress} ${remotePort}`

/**
 * The lines that are open, the oldest first. Where too many are held, by one address or by strangers together, the oldest
 * of theirs is cut: who only holds lines does not keep a newcomer out. One on which the paired phone was heard is never cut.
 */
class OpenLines {
  readonly #open = new Map<string, Line>()

  constructor(private readonly isPhone: IsPhone) {}

  /** False where there is no room for it. */
  add(socket: Socket, from: string): boolean {
    if (!this.#makeRoom(mostLinesOfOne, (line) => line.from === from)) return false
    if (!this.isPhone(from) && !this.#makeRoom(mostLinesOfStrangers, (line) => !line.isPhones && !this.isPhone(line.from))) return false
    const end = endOf(socket)
    const line: Line = { socket, from, isPhones: false }
    this.#open.set(end, line)
    socket.once('close', () => {
      if (this.#open.get(end) === line) this.#open.delete(end)
    })
    return true
  }

  heardPhone(socket: Socket): void {
    const line = this.#open.get(endOf(socket))
    if (line) line.isPhones = true
  }

  cutAll(): void {
    for (const { socket } of this.#open.values()) socket.destroy()
  }

  #makeRoom(most: number, isMeant: (line: Line) => boolean): boolean {
    const held = [...this.#open].filter(([, line]) => isMeant(line))
    if (held.length < most) return true
    const oldest = held.find(([, { isPhones }]) => !isPhones)
    if (oldest === undefined) return false
    // Not only when it says that it has closed: others may be begun before.
    this.#open.delete(oldest[0])
    oldest[1].socket.destroy()
    return true
  }
}

export interface BoundLines {
  /** The paired phone was heard on a line. */
  readonly heardPhone: (socket: Socket) => void
  /** Ends every line, those too that have not yet said anything. */
  readonly cut: () => void
}

/** Bounds a server on a network that others share: headers within 10 s, a body within 10 minutes, and few lines, of one address fewer still and not ever new ones. */
export const boundLines = (server: Server, isPhone: IsPhone, now: () => number): BoundLines => {
  const phonesLines = new Allowance(newLinesAtOnce, newLinesPerSecond)
  const strangersLines = new Allowance(newLinesAtOnce, newLinesPerSecond, strangersTogether)
  server.headersTimeout = 10_000
  server.requestTimeout = 600_000
  server.keepAliveTimeout = idleForMs
  server.maxHeadersCount = 60
  server.setTimeout(60_000)
  const open = new OpenLines(isPhone)
  server.on('connection', (socket: Socket) => {
    const from = socket.remoteAddress
    // Undefined where it has broken already.
    if (from === undefined || !(isPhone(from) ? phonesLines : strangersLines).take(from, now()) || !open.add(socket, from)) socket.destroy()
  })
  return { heardPhone: (socket) => open.heardPhone(socket), cut: () => open.cutAll() }
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
export const closing = (server: Server, cutLines: () => void): Closing => {
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
