import type { Shelf } from './shelf'

/** Which connection the pictures taken now are for, remembered on the phone; an empty id before there was any. */
export class Connection {
  #id = ''
  #isKept = false

  constructor(private readonly shelf: Pick<Shelf, 'pairing' | 'setPairing'>) {}

  get id(): string {
    return this.#id
  }

  async load(): Promise<void> {
    this.#id = (await this.shelf.pairing().catch(() => undefined)) ?? ''
    this.#isKept = this.#id !== ''
  }

  async begin(id: string): Promise<void> {
    this.#id = id
    this.#isKept = await this.shelf.setPairing(id).then(() => true, () => false)
  }

  /** Another tab of this phone may have paired since: its session now answers here too, perhaps for another survey. */
  async isElsewhere(): Promise<boolean> {
    if (!this.#isKept) return false
    const last = await this.shelf.pairing().catch(() => undefined)
    return last !== undefined && last !== this.#id
  }
}
