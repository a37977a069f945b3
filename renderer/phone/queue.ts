import { largestPhotographBytes } from '../../shared-logic/photographs/limits'
import type { CheckChosen, Picture } from './picture'
import { memoryShelf, type Shelf } from './shelf'

/** Desks keep at most 255 characters of a file's name; its end tells more than its beginning. */
const nameOf = (file: File): string => (file.name === '' ? 'picture' : file.name).slice(-255)

/** Makes a small copy to show; undefined where this browser cannot read the picture. */
export type Shrink = (file: Blob) => Promise<Blob | undefined>

/**
 * The pictures of this phone: in the page for showing, on the shelf for keeping. What the shelf does not take is kept
 * in the page and says so. The shelf may fail at any time; what stands in the page then counts, and a change that was
 * not kept costs at most that a picture is offered to the door again under the same id.
 */
export class Queue {
  #pictures: ReadonlyMap<string, Picture> = new Map()
  readonly #spare = memoryShelf()
  readonly #removed = new Set<string>()

  constructor(private readonly shelf: Shelf, private readonly shrink: Shrink, private readonly newId: () => string, private readonly tell: () => void) {}

  async load(): Promise<void> {
    const kept = await this.shelf.pictures().catch(() => [])
    this.#pictures = new Map(kept.toSorted((a, b) => a.turn - b.turn).map((picture) => [picture.id, picture]))
  }

  /** What another tab of this phone has taken in since. */
  async takeNew(): Promise<void> {
    const kept = await this.shelf.pictures().catch(() => [])
    const found = kept.filter(({ id }) => !this.#pictures.has(id) && !this.#removed.has(id))
    if (found.length === 0) return
    this.#pictures = new Map([...this.#pictures, ...found.map((picture) => [picture.id, picture] as const)])
    this.tell()
  }

  all(): readonly Picture[] {
    return [...this.#pictures.values()]
  }

  /** Takes a file in, for a connection and a check. It is kept before this resolves. */
  async add(file: File, pairing: string, place: CheckChosen | undefined): Promise<void> {
    const turn = this.all().reduce((last, picture) => Math.max(last, picture.turn), 0) + 1
    const picture: Picture = { id: this.newId(), pairing, turn, fileName: nameOf(file), state: 'waiting', warnings: [], tries: 0, ...(place && { place }) }
    const why = file.size === 0 ? 'empty' : file.size > largestPhotographBytes ? 'too large' : undefined
    if (why !== undefined) {
      this.#set({ ...picture, state: 'refused', why, isOnlyHere: true })
      return
    }
    const isKept = await this.shelf.add(picture, file).then(() => true, () => false)
    if (!isKept) await this.#spare.add(picture, file)
    this.#set(isKept ? picture : { ...picture, isOnlyHere: true })
    void this.#addSmall(picture.id, file)
  }

  async #addSmall(id: string, file: Blob): Promise<void> {
    const small = await this.shrink(file).catch(() => undefined)
    if (small !== undefined) await this.change(id, { small })
  }

  /** Undefined when it is not there any more. */
  async file(id: string): Promise<Blob | undefined> {
    return (await this.#spare.file(id)) ?? this.shelf.file(id).catch(() => undefined)
  }

  async change(id: string, how: Partial<Picture>): Promise<void> {
    const picture = this.#pictures.get(id)
    if (picture === undefined) return
    const next = { ...picture, ...how }
    this.#set(next)
    if (next.isOnlyHere !== true) await this.shelf.update(next).catch(() => undefined)
    if (next.state !== 'arrived' || picture.state === 'arrived') return
    await this.#spare.dropFile(id)
    if (next.isOnlyHere !== true) await this.shelf.dropFile(id).catch(() => undefined)
  }

  async remove(id: string): Promise<void> {
    this.#removed.add(id)
    this.#pictures = new Map([...this.#pictures].filter(([each]) => each !== id))
    this.tell()
    await this.#spare.remove(id)
    await this.shelf.remove(id).catch(() => undefined)
  }

  #set(picture: Picture): void {
    this.#pictures = new Map([...this.#pictures, [picture.id, picture]])
    this.tell()
  }
}
