import { NoAnswer, TurnedAway, type Door } from '../../../renderer/phone/door'
import type { PhoneChecks, PhonePhotograph } from '../../../shared-logic/phone/phone-door'

/** What may go wrong with one request, by its kind. */
export type Trouble = 'cut before' | 'cut after' | { readonly status: number; readonly code: string }

const stations: PhoneChecks['stations'] = [
  {
    title: 'Hubs',
    checks: [
      { checkId: 'hubs.oil-level', position: 'axle 1 left', title: 'Oil level', place: 'left', isOpen: true },
      { checkId: 'hubs.oil-level', position: 'axle 1 right', title: 'Oil level', place: 'right', isOpen: false },
      { checkId: 'hubs.dust-cap', position: 'axle 1 left', title: 'Dust cap', place: 'left', isOpen: true },
    ],
  },
  { title: 'Winch post', checks: [{ checkId: 'winch.strap', position: 'once', title: 'Winch strap', place: '', isOpen: true }] },
  { title: 'Lights and wiring', checks: [{ checkId: 'lights.plug', position: 'once', title: 'Plug', place: '', isOpen: false }] },
]

/** A door as the desktop holds it, with the line to it under the test's thumb. */
export class FakeDoor implements Door {
  /** Undefined once it has been used. */
  secret: string | undefined = 'right'
  hasSession = false
  connectionId: string = crypto.randomUUID()
  isClosed = false
  closesAt = new Date(Date.now() + 3_600_000).toISOString()
  stations = stations
  /** Pictures under another name that were there already. */
  readonly same: string[] = []
  /** What was kept, in order: id, check and bytes. */
  readonly kept: { readonly about: PhonePhotograph; readonly text: string }[] = []
  /** Uploads of what was kept already. */
  doubled = 0
  warnings: readonly string[] = []
  /** Asked before each request; undefined lets it through. */
  trouble: (request: 'pair' | 'checks' | 'send' | 'arrived', about?: PhonePhotograph) => Trouble | undefined = () => undefined
  readonly asked: string[] = []

  readonly pair: Door['pair'] = (secret) => this.#meet('pair', undefined, () => {
    if (this.hasSession) return this.#standing()
    if (secret !== this.secret) throw new TurnedAway(403, 'phone.used', 'This code has been used.')
    this.secret = undefined
    this.hasSession = true
    return this.#standing()
  })

  readonly checks: Door['checks'] = () => this.#meet('checks', undefined, () => {
    this.#needSession()
    return { ...this.#standing(), stations: this.stations }
  })

  readonly arrived: Door['arrived'] = () => this.#meet('arrived', undefined, () => {
    this.#needSession()
    const first = this.warnings.length === 0 ? [] : this.kept.map(({ about: { pictureId } }) => ({ pictureId, alreadyThere: false, warnings: [...this.warnings] }))
    return {
      pictureIds: [...this.kept.map(({ about }) => about.pictureId), ...this.same],
      told: [...first, ...this.same.map((pictureId) => ({ pictureId, alreadyThere: true, warnings: [...this.warnings] }))],
    }
  })

  readonly send: Door['send'] = async (about, file, onProgress) => {
    const text = await file.text()
    onProgress(0.5)
    return this.#meet('send', about, () => {
      this.#needSession()
      if (about.connectionId !== this.connectionId) throw new TurnedAway(409, 'phone.other-connection', 'Go on in the other tab.')
      const isAgain = this.kept.some((each) => each.about.pictureId === about.pictureId)
      const alreadyThere = !isAgain && this.kept.some((each) => each.text === text && each.about.checkId === about.checkId && each.about.position === about.position)
      if (isAgain) this.doubled += 1
      else if (alreadyThere) this.same.push(about.pictureId)
      else this.kept.push({ about, text })
      return { pictureId: about.pictureId, alreadyThere, warnings: [...this.warnings] }
    })
  }

  #standing() {
    return { closesAt: this.closesAt, connectionId: this.connectionId, clockAheadMs: 0 }
  }

  #needSession(): void {
    if (!this.hasSession) throw new TurnedAway(401, 'phone.no-session', 'This phone is not connected.')
    if (this.isClosed) throw new TurnedAway(410, 'phone.closed', 'The door is closed.')
  }

  /** Settles in a later turn of the loop, as a network does. */
  async #meet<Reply>(request: 'pair' | 'checks' | 'send' | 'arrived', about: PhonePhotograph | undefined, answer: () => Reply): Promise<Reply> {
    this.asked.push(request)
    await Promise.resolve()
    const trouble = this.trouble(request, about)
    if (trouble === 'cut before') throw new NoAnswer(request)
    if (typeof trouble === 'object') throw new TurnedAway(trouble.status, trouble.code, `Because of ${trouble.code}.`)
    const reply = answer()
    if (trouble === 'cut after') throw new NoAnswer(request)
    return reply
  }
}

export const pictureFile = (name: string, text = name): File => new File([text], name, { type: 'image/jpeg' })

/** Ids that can be told apart and are drawn in order. */
export const counting = (): (() => string) => {
  let count = 0
  return () => {
    count += 1
    return `picture-id-${String(count).padStart(8, '0')}`
  }
}
