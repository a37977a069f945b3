import { randomUUID } from 'node:crypto'
import type { IncomingMessage } from 'node:http'
import { printable } from '../../shared-logic/words/printable'
import { cookieOf, newSecret, same } from '../serving/secrets'

/**
 * A guess is 1 in 2^256; ten wrong ones are somebody trying, and for that address the code holds no more. For another it
 * does, lest anybody on the network can take it from the phone that has it; a hundred from all together withdraw it.
 */
const mostWrongOfOne = 10
const mostWrong = 100

export interface PairedPhone {
  readonly name: string
  readonly pairedAtMs: number
  lastHeardAtMs: number
  lastAddress: string
}

export type Pairing = { readonly ok: true; readonly cookie: string } | { readonly ok: false; readonly why: 'phone.wrong-secret' | 'phone.used-secret' | 'phone.withdrawn' }

/**
 * One phone, let in once. The secret stands in the QR code alone; it is traded for a cookie, and a second phone that
 * comes with it is turned away. A cookie knows no port, so its name carries ours.
 */
export class PairingDesk {
  readonly #secret = newSecret()
  readonly #session = newSecret()
  readonly #cookieName: string
  readonly #cookieRest: string
  readonly #wrongFrom = new Map<string, number>()
  #wrong = 0
  #phone: PairedPhone | undefined
  /** A name for the door and the phone it lets in; it opens nothing. */
  readonly connectionId = randomUUID()

  constructor(port: number, isSecure: boolean, lastsSeconds: number) {
    this.#cookieName = `bunkwright-phone-${port}`
    this.#cookieRest = `; Path=/; Max-Age=${lastsSeconds}; HttpOnly; SameSite=Strict${isSecure ? '; Secure' : ''}`
  }

  /** For the QR code; undefined once it is used or withdrawn. */
  get secret(): string | undefined {
    return this.#phone === undefined && this.#wrong < mostWrong ? this.#secret : undefined
  }

  get phone(): PairedPhone | undefined {
    return this.#phone
  }

  /** Whether the caller is the paired phone. Its coming is noted. */
  knows(request: IncomingMessage, nowMs: number): boolean {
    const cookie = cookieOf(request.headers.cookie, this.#cookieName)
    if (this.#phone === undefined || cookie === undefined || !same(cookie, this.#session)) return false
    this.#phone.lastHeardAtMs = nowMs
    // Undefined where its line has broken meanwhile.
    this.#phone.lastAddress = request.socket.remoteAddress ?? this.#phone.lastAddress
    return true
  }

  /** Whether the paired phone spoke last from there. Others may stand behind the same address: it gives a place among the lines, and nothing else. */
  speaksFrom(address: string): boolean {
    return this.#phone?.lastAddress === address
  }

  /** `from`: the address the caller speaks from. */
  pair(given: string, phoneName: string, from: string, nowMs: number): Pairing {
    const wrongBefore = this.#wrongFrom.get(from) ?? 0
    if (this.#wrong >= mostWrong || wrongBefore >= mostWrongOfOne) return { ok: false, why: 'phone.withdrawn' }
    if (!same(given, this.#secret)) {
      this.#wrong += 1
      this.#wrongFrom.set(from, wrongBefore + 1)
      return { ok: false, why: 'phone.wrong-secret' }
    }
    if (this.#phone !== undefined) return { ok: false, why: 'phone.used-secret' }
    this.#phone = { name: printable(phoneName), pairedAtMs: nowMs, lastHeardAtMs: nowMs, lastAddress: from }
    return { ok: true, cookie: `${this.#cookieName}=${this.#session}${this.#cookieRest}` }
  }
}
