import type { IncomingMessage } from 'node:http'
import { cookieOf, newSecret, same } from '../serving/secrets'

/** Why a caller is turned away; its sentence stands in the words under `doors.turnedAway`. */
export type TurnedAway = 'not our address' | 'not admitted' | 'another page'

const ticketLifeMs = 60_000

/**
 * Who may come in. The printed address carries a token, which is traded for a cookie; everything else asks for the
 * cookie. A cookie knows no port, so its name carries ours: two hosts on one machine do not put each other out.
 */
export class Guard {
  readonly #token = newSecret()
  readonly #session = newSecret()
  readonly #tickets = new Map<string, number>()
  readonly #origin: string
  readonly #host: string
  readonly #cookieName: string

  constructor(port: number) {
    this.#host = `127.0.0.1:${port}`
    this.#origin = `http://${this.#host}`
    this.#cookieName = `bunkwright-${port}`
  }

  /** The address to print: it works for as long as the host runs. */
  get address(): string {
    return `${this.#origin}/?token=${this.#token}`
  }

  /** An address that opens once, within a minute: for a command line, which other people of the machine may read. */
  addressForOnce(nowMs: number): string {
    const ticket = newSecret()
    this.#tickets.set(ticket, nowMs + ticketLifeMs)
    return `${this.#origin}/?token=${ticket}`
  }

  get cookie(): string {
    return `${this.#cookieName}=${this.#session}; Path=/; HttpOnly; SameSite=Strict`
  }

  /** A page of another name that resolves to this machine sends its own name as Host. */
  hostTrouble(request: IncomingMessage): TurnedAway | undefined {
    return request.headers.host === this.#host ? undefined : 'not our address'
  }

  admits(token: string, nowMs: number): boolean {
    if (same(token, this.#token)) return true
    const until = this.#tickets.get(token)
    this.#tickets.delete(token)
    return until !== undefined && nowMs <= until
  }

  /** Everything but the entrance: the cookie, nothing begun by another page, and our origin where something is written. */
  callerTrouble(request: IncomingMessage): TurnedAway | undefined {
    const cookie = cookieOf(request.headers.cookie, this.#cookieName)
    if (cookie === undefined || !same(cookie, this.#session)) return 'not admitted'
    const site = request.headers['sec-fetch-site']
    if (site !== undefined && site !== 'same-origin' && site !== 'none') return 'another page'
    if (request.method === 'POST' && request.headers.origin !== this.#origin) return 'another page'
    return undefined
  }
}
