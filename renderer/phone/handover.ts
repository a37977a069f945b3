import { Connection } from './connection'
import { NoAnswer, TurnedAway, type Door, type PairReply, type PhotographReply, type Told } from './door'
import type { HandoverView, Link } from './handover-view'
import type { CheckChosen, Picture } from './picture'
import { Queue, type Shrink } from './queue'
import { Resting } from './resting'
import type { Shelf } from './shelf'
import { Steps } from './steps'
import { kindOf, pauseAfter } from './turned-away'

interface Parts {
  readonly door: Door
  readonly shelf: Shelf
  readonly shrink: Shrink
  readonly newId: () => string
  readonly phoneName: string
}

/** A picture that breaks off so often on a line that carries other pictures is not tried again by itself. */
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
  readonly #connection: Connection
  #secret: string | undefined
  /** The door this page comes to tells which connection it is in; one it finds there later is another tab's. */
  #isJoining = true
  #mustAskChecks = true
  #mustAskArrived = true
  /** Broke off just now: if the door answers at once, it was not the line. */
  #suspect: string | undefined
  readonly #resting = new Resting()
  #carried = 0
  /** How many other pictures the line had carried when one first broke off. */
  readonly #carriedBefore = new Map<string, number>()
  #misses = 0
  #beats = 0
  /** One thing at a time, until nothing is left to do, the door is silent, or it has closed. */
  readonly #steps = new Steps(() => this.#step(), () => this.#hasEnded, (error) => this.#meet(error))

  constructor(private readonly parts: Parts) {
    this.#connection = new Connection(parts.shelf, parts.newId())
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
    await this.#connection.load()
    this.join(secret)
  }

  /** Goes to the door anew, with a code's secret or with the session there is. */
  readonly join = (secret: string | undefined): void => {
    this.#secret = secret
    this.#isJoining = true
    this.#mustAskChecks = true
    this.#mustAskArrived = true
    this.#show({ link: { state: 'joining' } })
    void this.#steps.run()
  }

  /** Takes pictures in. Whatever the link, none is turned away here. */
  readonly add = async (files: readonly File[], place: CheckChosen | undefined): Promise<void> => {
    for (const file of files) {
      await this.#queue.add(file, this.#connection.id, place)
      void this.#steps.run()
    }
  }

  /** The network is back, or someone looks at the page again: asked at once, whatever pause there was. */
  readonly wake = (): void => {
    this.#misses = 0
    this.#resting.wakeAll()
    this.#mustAskChecks = true
    this.#mustAskArrived = true
    void this.#queue.takeNew().then(() => this.#steps.run())
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
    void this.#steps.run()
  }

  readonly sendAgain = async (id: string): Promise<void> => {
    this.#resting.wake(id)
    await this.#queue.change(id, { state: 'waiting', tries: 0, sentence: undefined, code: undefined, why: undefined })
    void this.#steps.run()
  }

  readonly remove = (id: string): Promise<void> => this.#queue.remove(id)

  readonly file = (id: string): Promise<Blob | undefined> => this.#queue.file(id)

  /** The person says that those belong here that still wait. A check that this survey does not ask stays behind. */
  readonly adoptEarlier = async (): Promise<void> => {
    const known = new Set(this.#view.stations?.flatMap(({ checks }) => checks.map(({ checkId, position }) => `${checkId} ${position}`)))
    for (const { id, place } of this.#view.earlier.filter(({ state }) => state === 'waiting')) {
      const isAsked = place !== undefined && known.has(`${place.checkId} ${place.position}`)
      await this.#queue.change(id, { pairing: this.#connection.id, tries: 0, place: isAsked ? place : undefined })
    }
    void this.#steps.run()
  }

  #show(change: Partial<HandoverView>): void {
    const all = this.#queue.all()
    const { state } = change.link ?? this.#view.link
    this.#view = {
      ...this.#view, ...change,
      isPaired: this.#connection.id !== '' && this.#secret === undefined && state !== 'no code' && state !== 'not let in',
      pictures: all.filter(({ pairing }) => pairing === this.#connection.id),
      earlier: all.filter((each) => each.pairing !== this.#connection.id && each.state !== 'arrived'),
    }
    for (const listener of this.#listeners) listener()
  }

  #end(link: Link): void {
    this.#steps.rest()
    this.#show({ link, sending: undefined, putOff: undefined })
  }

  get #hasEnded(): boolean {
    const { state } = this.#view.link
    return state === 'closed' || state === 'not let in' || (state === 'no code' && this.#secret === undefined)
  }

  /** No answer to a question: asked again in a while. */
  #meet(error: unknown): void {
    this.#suspect = undefined
    this.#mustAskArrived = true
    this.#misses += 1
    if (error instanceof TurnedAway && kindOf(error) === 'ended') return this.#end(this.#view.closesAtMs === undefined ? { state: 'no code' } : { state: 'closed', why: 'told', sentence: error.sentence })
    if (error instanceof TurnedAway) this.#show({ putOff: error.sentence })
    else this.#show({ link: { state: 'silent' }, sending: undefined })
    return this.#steps.runIn(pauseAfter(this.#misses))
  }

  async #step(): Promise<boolean> {
    const did = await this.#doNext()
    if (did) this.#misses = 0
    return did
  }

  /** Does the next thing; false when there is none for now. */
  async #doNext(): Promise<boolean> {
    if (this.#secret !== undefined) return this.#pair(this.#secret)
    if (!this.#isJoining && (await this.#connection.isElsewhere())) return this.#standBack()
    if (this.#mustAskChecks) return this.#askChecks()
    if (this.#mustAskArrived) return this.#askArrived()
    const next = this.#resting.nextOf(this.#view.pictures)
    if (next !== undefined) return this.#send(next)
    const pauseMs = this.#resting.firstWakesInMs()
    if (pauseMs !== undefined) this.#steps.runIn(pauseMs)
    return false
  }

  async #pair(secret: string): Promise<boolean> {
    try {
      const reply = await this.parts.door.pair(secret, this.parts.phoneName)
      this.#secret = undefined
      await this.#opened(reply)
    } catch (error) {
      if (!(error instanceof TurnedAway) || kindOf(error) === 'later') throw error
      this.#secret = undefined
      // The same code read twice by one phone: its session may stand.
      const isLetIn = await this.#askChecks().catch((why: unknown) => { if (why instanceof NoAnswer) throw why; return false })
      if (!isLetIn) this.#end({ state: 'not let in', sentence: error.sentence })
    }
    return true
  }

  /** Another tab of this phone has joined since. False, for nothing more is done here. */
  #standBack(): false {
    this.#end({ state: 'closed', why: 'elsewhere' })
    return false
  }

  /** Let in. By the same door as before what waits goes on; by another it is an earlier connection's, and what that saw arrive is of no more use. */
  async #takeOver(connectionId: string): Promise<void> {
    await this.#connection.takeOver(connectionId)
    this.#isJoining = false
    for (const { id, state, pairing } of this.#queue.all()) if (state === 'arrived' && pairing !== connectionId) await this.#queue.remove(id)
  }

  async #opened({ closesAt, clockAheadMs, connectionId }: Told<PairReply>): Promise<boolean> {
    if (this.#isJoining) await this.#takeOver(connectionId)
    else if (connectionId !== this.#connection.id) return this.#standBack()
    this.#show({ link: { state: 'open' }, closesAtMs: Date.parse(closesAt) - clockAheadMs })
    return true
  }

  async #askChecks(): Promise<boolean> {
    const reply = await this.parts.door.checks()
    this.#mustAskChecks = false
    const isOpen = await this.#opened(reply)
    if (isOpen) this.#show({ stations: reply.stations })
    return isOpen
  }

  async #askArrived(): Promise<boolean> {
    const { pictureIds, told } = await this.parts.door.arrived()
    const arrived = new Set(pictureIds)
    this.#mustAskArrived = false
    if (this.#view.link.state !== 'open') this.#show({ link: { state: 'open' } })
    for (const { id, state } of this.#view.pictures) if (state !== 'arrived' && arrived.has(id)) await this.#hasArrived(id, told)
    await this.#blameSuspect()
    return true
  }

  /** `told`: what the door says of pictures that arrived; of one that is there already what is wrong was said when it came. */
  #hasArrived(id: string, told: readonly PhotographReply[]): Promise<void> {
    const { alreadyThere = false, warnings = [] } = told.find(({ pictureId }) => pictureId === id) ?? {}
    return this.#queue.change(id, { state: 'arrived', isAlreadyThere: alreadyThere, warnings: alreadyThere ? [] : warnings, sentence: undefined, code: undefined, why: undefined })
  }

  /** The desktop answers: what broke off goes behind the others. It is given up after a few times if they went through; if none did, the line carries no pictures. */
  async #blameSuspect(): Promise<void> {
    const suspect = this.#queue.all().find(({ id, state }) => id === this.#suspect && state === 'waiting')
    this.#suspect = undefined
    if (suspect === undefined) return
    const tries = suspect.tries + 1
    const carriedBefore = this.#carriedBefore.get(suspect.id) ?? this.#carried
    this.#carriedBefore.set(suspect.id, carriedBefore)
    this.#resting.rest(suspect.id, tries)
    await this.#queue.change(suspect.id, tries >= mostTries && this.#carried > carriedBefore ? { tries, state: 'refused', why: 'broke off' } : { tries })
  }

  async #send({ id, fileName, place, tries }: Picture): Promise<boolean> {
    const file = await this.#queue.file(id)
    if (file === undefined) return this.#withoutFile(id)
    this.#show({ sending: { id, share: 0 } })
    try {
      const about = { pictureId: id, connectionId: this.#connection.id, fileName, ...(place && { checkId: place.checkId, position: place.position }) }
      await this.#hasArrived(id, [await this.parts.door.send(about, file, (share) => this.#show({ sending: { id, share } }))])
      this.#carried += 1
      this.#show({ sending: undefined, putOff: undefined })
      return true
    } catch (error) {
      this.#show({ sending: undefined })
      return this.#notSent(id, tries, error)
    }
  }

  /** Lost from the phone's storage, or put away by another tab that heard it arrive. */
  async #withoutFile(id: string): Promise<boolean> {
    const { pictureIds, told } = await this.parts.door.arrived()
    await (pictureIds.includes(id) ? this.#hasArrived(id, told) : this.#queue.change(id, { state: 'refused', why: 'gone' }))
    return true
  }

  async #notSent(id: string, tries: number, error: unknown): Promise<boolean> {
    if (!(error instanceof TurnedAway)) {
      this.#suspect = id
      this.#mustAskArrived = true
      return true
    }
    if (error.code === 'phone.other-connection') return this.#standBack()
    const kind = kindOf(error)
    if (kind === 'ended') throw error
    if (kind === 'for good') {
      await this.#queue.change(id, { state: 'refused', sentence: error.sentence, code: error.code })
      return true
    }
    this.#resting.rest(id, tries + 1)
    await this.#queue.change(id, { tries: tries + 1 })
    this.#show({ putOff: error.sentence })
    return true
  }
}
