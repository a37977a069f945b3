import { NoAnswer, TurnedAway, type ChecksReply, type Door, type Told } from './door'
import type { CheckChosen, Picture } from './picture'
import { Queue, type Shrink } from './queue'
import type { Shelf } from './shelf'
import { kindOf, pauseAfter } from './turned-away'

/** How this page stands with the desktop. `sentence`: the door's own, where it gave one. */
export type Link =
  | { readonly state: 'joining' | 'open' | 'silent' | 'no code' }
  | { readonly state: 'not let in'; readonly sentence?: string | undefined }
  | { readonly state: 'closed'; readonly why: 'told' | 'time' | 'elsewhere'; readonly sentence?: string | undefined }

export interface HandoverView {
  readonly link: Link
  /** Whether there is a connection that pictures can be taken for, even if its door is silent or has closed. */
  readonly isPaired: boolean
  /** By this phone's clock. */
  readonly closesAtMs?: number | undefined
  readonly stations?: ChecksReply['stations'] | undefined
  /** Of this connection, in order. */
  readonly pictures: readonly Picture[]
  /** Not sent when an earlier connection ended: whether they belong to this survey only the person knows. */
  readonly earlier: readonly Picture[]
  readonly sending?: { readonly id: string; readonly share: number } | undefined
  /** Why the desktop takes nothing at present, although it answers. */
  readonly putOff?: string | undefined
  /** Whether what waits outlives this page. */
  readonly isLasting: boolean
}

interface Parts {
  readonly door: Door
  readonly shelf: Shelf
  readonly shrink: Shrink
  readonly newId: () => string
  readonly phoneName: string
}

/** A picture that breaks off so often on a line that carries everything else is not tried again by itself. */
const mostTries = 5
/** A closing time is believed when it has passed by more than clocks are told apart. */
const clockGraceMs = 1_500

/**
 * Hands pictures over to the desktop: one at a time, in order, each kept on the phone first and sent until it is known
 * to have arrived. After every cut the door is asked what arrived before anything is sent again, and a picture keeps its
 * id, so that none is lost and none doubled.
 */
export class Handover {
  readonly #queue: Queue
  readonly #listeners = new Set<() => void>()
  #view: HandoverView
  #pairing = ''
  #isPairingKept = false
  #secret: string | undefined
  #mustAskChecks = true
  #mustAskArrived = true
  /** Broke off just now: if the door answers at once, it was not the line. */
  #suspect: string | undefined
  /** Pictures that broke off or were put off, and until when they rest. */
  readonly #resting = new Map<string, number>()
  #misses = 0
  #beats = 0
  #isWorking = false
  #isWanted = false
  #timer: ReturnType<typeof setTimeout> | undefined

  constructor(private readonly parts: Parts) {
    this.#queue = new Queue(parts.shelf, parts.shrink, parts.newId, () => this.#show({}))
    this.#view = { link: { state: 'joining' }, isPaired: false, pictures: [], earlier: [], isLasting: parts.shelf.isLasting }
  }

  readonly subscribe = (listener: () => void): (() => void) => {
    this.#listeners.add(listener)
    return () => this.#listeners.delete(listener)
  }

  /** The same view until something changes, a new one after. */
  readonly view = (): HandoverView => this.#view

  async start(secret: string | undefined): Promise<void> {
    await this.#queue.load()
    this.#pairing = (await this.parts.shelf.pairing().catch(() => undefined)) ?? ''
    this.#isPairingKept = this.#pairing !== ''
    this.join(secret)
  }

  /** Goes to the door anew, with a code's secret or with the session there is. */
  readonly join = (secret: string | undefined): void => {
    this.#secret = secret
    this.#mustAskChecks = true
    this.#mustAskArrived = true
    this.#show({ link: { state: 'joining' } })
    void this.#work()
  }

  /** Takes pictures in. Whatever the link, none is turned away here. */
  readonly add = async (files: readonly File[], place: CheckChosen | undefined): Promise<void> => {
    for (const file of files) {
      await this.#queue.add(file, this.#pairing, place)
      void this.#work()
    }
  }

  /** The network is back, or someone looks at the page again: asked at once, whatever pause there was. */
  readonly wake = (): void => {
    this.#misses = 0
    this.#resting.clear()
    this.#mustAskChecks = true
    this.#mustAskArrived = true
    void this.#work()
  }

  /** Called every few seconds while someone looks: the phone is heard of, and hears when the door closes. */
  readonly beat = (): void => {
    const { link, closesAtMs } = this.#view
    if (link.state !== 'open' && link.state !== 'silent') return
    if (closesAtMs !== undefined && Date.now() > closesAtMs + clockGraceMs) return this.#end({ state: 'closed', why: 'time' })
    if (link.state === 'silent') return
    this.#beats += 1
    this.#mustAskArrived = true
    this.#mustAskChecks ||= this.#beats % 4 === 0
    void this.#work()
  }

  readonly sendAgain = async (id: string): Promise<void> => {
    this.#resting.delete(id)
    await this.#queue.change(id, { state: 'waiting', tries: 0, sentence: undefined, why: undefined })
    void this.#work()
  }

  readonly remove = (id: string): Promise<void> => this.#queue.remove(id)

  readonly file = (id: string): Promise<Blob | undefined> => this.#queue.file(id)

  /** The person says that those belong here that still wait. A check that this survey does not ask stays behind. */
  readonly adoptEarlier = async (): Promise<void> => {
    const known = new Set(this.#view.stations?.flatMap(({ checks }) => checks.map(({ checkId, position }) => `${checkId} ${position}`)))
    for (const { id, place } of this.#view.earlier.filter(({ state }) => state === 'waiting')) {
      const isAsked = place !== undefined && known.has(`${place.checkId} ${place.position}`)
      await this.#queue.change(id, { pairing: this.#pairing, tries: 0, place: isAsked ? place : undefined })
    }
    void this.#work()
  }

  #show(change: Partial<HandoverView>): void {
    const all = this.#queue.all()
    const { state } = change.link ?? this.#view.link
    this.#view = {
      ...this.#view, ...change,
      isPaired: this.#pairing !== '' && this.#secret === undefined && state !== 'no code' && state !== 'not let in',
      pictures: all.filter(({ pairing }) => pairing === this.#pairing),
      earlier: all.filter(({ pairing, state }) => pairing !== this.#pairing && state !== 'arrived'),
    }
    for (const listener of this.#listeners) listener()
  }

  #end(link: Link): void {
    clearTimeout(this.#timer)
    this.#show({ link, sending: undefined, putOff: undefined })
  }

  get #hasEnded(): boolean {
    const { state } = this.#view.link
    return state === 'closed' || state === 'not let in' || (state === 'no code' && this.#secret === undefined)
  }

  /** One at a time, until nothing is left to do, the door is silent, or it has closed. */
  async #work(): Promise<void> {
    this.#isWanted = true
    if (this.#isWorking) return
    clearTimeout(this.#timer)
    this.#isWorking = true
    try {
      while (!this.#hasEnded && this.#isWanted) {
        this.#isWanted = false
        if (!(await this.#step())) continue
        this.#isWanted = true
        this.#misses = 0
      }
    } catch (error) {
      this.#meet(error)
    } finally {
      this.#isWorking = false
    }
  }

  #again(afterMs: number): void {
    clearTimeout(this.#timer)
    this.#timer = setTimeout(() => void this.#work(), afterMs)
  }

  /** No answer to a question: asked again in a while. */
  #meet(error: unknown): void {
    this.#suspect = undefined
    this.#mustAskArrived = true
    this.#misses += 1
    if (error instanceof TurnedAway && kindOf(error) === 'ended') return this.#end(this.#view.closesAtMs === undefined ? { state: 'no code' } : { state: 'closed', why: 'told', sentence: error.sentence })
    if (error instanceof TurnedAway) this.#show({ putOff: error.sentence })
    else this.#show({ link: { state: 'silent' }, sending: undefined })
    return this.#again(pauseAfter(this.#misses))
  }

  /** The next thing to do; false when there is none for now. */
  async #step(): Promise<boolean> {
    if (this.#secret !== undefined) return this.#pair(this.#secret)
    if (this.#mustAskChecks) return this.#askChecks()
    if (this.#mustAskArrived) return this.#askArrived()
    const next = this.#next()
    if (next !== undefined) return this.#send(next)
    const until = Math.min(...this.#resting.values())
    if (Number.isFinite(until)) this.#again(Math.max(until - Date.now(), 0))
    return false
  }

  /** The first that waits and does not rest; what broke off before comes after what did not. */
  #next(): Picture | undefined {
    const now = Date.now()
    for (const [id, until] of this.#resting) if (until <= now) this.#resting.delete(id)
    return this.#view.pictures.filter(({ id, state }) => state === 'waiting' && !this.#resting.has(id)).toSorted((a, b) => a.tries - b.tries || a.turn - b.turn)[0]
  }

  #rest(id: string, tries: number): void {
    this.#resting.set(id, Date.now() + pauseAfter(tries))
  }

  async #pair(secret: string): Promise<boolean> {
    try {
      const reply = await this.parts.door.pair(secret, this.parts.phoneName)
      this.#secret = undefined
      await this.#newPairing()
      this.#opened(reply)
    } catch (error) {
      if (!(error instanceof TurnedAway)) throw error
      this.#secret = undefined
      // The same code read twice by one phone: its session may stand.
      const isLetIn = await this.#askChecks().catch((why: unknown) => { if (why instanceof NoAnswer) throw why; return false })
      if (!isLetIn) this.#end({ state: 'not let in', sentence: error.sentence })
    }
    return true
  }

  /** What an earlier connection saw arrive is of no more use here. */
  async #newPairing(): Promise<void> {
    this.#pairing = this.parts.newId()
    this.#isPairingKept = await this.parts.shelf.setPairing(this.#pairing).then(() => true, () => false)
    for (const { id, state, pairing } of this.#queue.all()) if (state === 'arrived' && pairing !== this.#pairing) await this.#queue.remove(id)
  }

  #opened({ closesAt, clockAheadMs }: Told<{ readonly closesAt: string }>): void {
    this.#show({ link: { state: 'open' }, closesAtMs: Date.parse(closesAt) - clockAheadMs })
  }

  async #askChecks(): Promise<boolean> {
    const reply = await this.parts.door.checks()
    this.#mustAskChecks = false
    if (this.#pairing === '') await this.#newPairing()
    this.#show({ stations: reply.stations })
    this.#opened(reply)
    return true
  }

  async #askArrived(): Promise<boolean> {
    const arrived = new Set((await this.parts.door.arrived()).pictureIds)
    this.#mustAskArrived = false
    if (this.#view.link.state !== 'open') this.#show({ link: { state: 'open' } })
    for (const { id, state } of this.#view.pictures) if (state !== 'arrived' && arrived.has(id)) await this.#hasArrived(id, [])
    await this.#blameSuspect()
    return true
  }

  #hasArrived(id: string, warnings: readonly string[]): Promise<void> {
    return this.#queue.change(id, { state: 'arrived', warnings, sentence: undefined, why: undefined })
  }

  /** The line carries: what broke off on it goes behind the others, and is given up after a few times. */
  async #blameSuspect(): Promise<void> {
    const suspect = this.#queue.all().find(({ id, state }) => id === this.#suspect && state === 'waiting')
    this.#suspect = undefined
    if (suspect === undefined) return
    const tries = suspect.tries + 1
    this.#rest(suspect.id, tries)
    await this.#queue.change(suspect.id, tries >= mostTries ? { tries, state: 'refused', why: 'broke off' } : { tries })
  }

  /** Another tab of this phone may have paired since: its session now answers here too, perhaps for another survey. */
  async #isElsewhere(): Promise<boolean> {
    if (!this.#isPairingKept) return false
    const last = await this.parts.shelf.pairing().catch(() => undefined)
    return last !== undefined && last !== this.#pairing
  }

  async #send({ id, fileName, place, tries }: Picture): Promise<boolean> {
    if (await this.#isElsewhere()) {
      this.#end({ state: 'closed', why: 'elsewhere' })
      return false
    }
    const file = await this.#queue.file(id)
    if (file === undefined) {
      await this.#queue.change(id, { state: 'refused', why: 'gone' })
      return true
    }
    this.#show({ sending: { id, share: 0 } })
    try {
      const about = { pictureId: id, fileName, ...(place && { checkId: place.checkId, position: place.position }) }
      const { warnings } = await this.parts.door.send(about, file, (share) => this.#show({ sending: { id, share } }))
      await this.#hasArrived(id, warnings)
      this.#show({ sending: undefined, putOff: undefined })
      return true
    } catch (error) {
      this.#show({ sending: undefined })
      return this.#notSent(id, tries, error)
    }
  }

  async #notSent(id: string, tries: number, error: unknown): Promise<boolean> {
    if (!(error instanceof TurnedAway)) {
      this.#suspect = id
      this.#mustAskArrived = true
      return true
    }
    const kind = kindOf(error)
    if (kind === 'ended') throw error
    if (kind === 'for good') {
      await this.#queue.change(id, { state: 'refused', sentence: error.sentence })
      return true
    }
    this.#rest(id, tries + 1)
    await this.#queue.change(id, { tries: tries + 1 })
    this.#show({ putOff: error.sentence })
    return true
  }
}
