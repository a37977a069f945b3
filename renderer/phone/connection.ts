import type { Shelf } from './shelf'

/**
 * Which connection the pictures taken now are for, and which tab of this phone hands them over: both remembered on the
 * phone. The id is the desktop's name for it, empty before there was any.
 */
export class Connection {
  #id = ''
  #isHeld = false

  constructor(private readonly shelf: Pick<Shelf, 'pairing' | 'setPairing' | 'tab' | 'setTab'>, private readonly tab: string) {}

  get id(): string {
    return this.#id
  }

  async load(): Promise<void> {
    this.#id = (await this.shelf.pairing().catch(() => undefined)) ?? ''
  }

  /** This tab hands over from now on, and any other stands back. */
  async takeOver(id: string): Promise<void> {
    this.#id = id
    this.#isHeld = await Promise.all([this.shelf.setTab(this.tab), this.shelf.setPairing(id)]).then(() => true, () => false)
  }

  /** Another tab of this phone has taken over since: what it found waiting here it sends, and its session now answers here too. */
  async isElsewhere(): Promise<boolean> {
    if (!this.#isHeld) return false
    const last = await this.shelf.tab().catch(() => undefined)
    return last !== undefined && last !== this.tab
  }
}
