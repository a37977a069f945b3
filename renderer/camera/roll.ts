import { holdWindow } from '../parts/hold-window'
import type { Grabbed } from './grab-picture'
import { pictureName } from './picture-name'

/** One picture taken since the view was opened. */
export interface Shot {
  readonly number: number
  readonly thumbnail: ImageBitmap
  /** Its photograph, once that is kept. */
  readonly photographId: string | undefined
}

export interface RollNow {
  /** Those taken and not removed again, in the order they were taken. */
  readonly shots: readonly Shot[]
  /** Pictures taken, those removed again too. */
  readonly taken: number
  /** Why the last press of the shutter came to nothing: too much is on its way, or the picture could not be made. */
  readonly trouble: 'busy' | 'failed' | undefined
}

/** Where the pictures go. */
export interface RollKeeper {
  /** Answers the photograph's id once it is kept; undefined when it was let go. */
  readonly handIn: (file: File) => Promise<string | undefined>
  /** Settled when it is out, or could not be taken out. */
  readonly takeBack: (photographId: string) => Promise<void>
}

interface Kept extends Shot {
  /** Seen among the survey's photographs: when it is no longer there, it was removed. */
  readonly hasStood: boolean
  readonly isOnItsWayOut: boolean
}

/** The camera itself has a handful of frames: more are not held while they are written. */
const mostUnwritten = 4
/** And this many pictures wait for the desk in memory, some 100 MB. */
const mostUnkept = 24
/** More than can be seen at once, and than are taken back. */
const mostRemembered = 40
/** The window's list of photographs follows a removal within this. */
const followsMs = 100

/**
 * The pictures taken in one opening of the camera, on their way to the desk in the order they were taken. It goes on
 * when the view is closed. Bounded: while too much is on its way no further picture is taken.
 */
export class Roll {
  #now: RollNow = { shots: [], taken: 0, trouble: undefined }
  #all: readonly Kept[] = []
  #standing: ReadonlySet<string> = new Set()
  #unwritten = 0
  #unkept = 0
  #letGo: (() => void) | undefined
  /** Settled when the last picture is handed in; the next does not wait until that is kept. */
  #before: Promise<void> = Promise.resolve()
  #second = ''
  #within = 0
  readonly #listeners = new Set<() => void>()

  #keeper: RollKeeper | undefined

  constructor(private readonly place: string, private readonly clock: () => Date = () => new Date()) {}

  /** Told who keeps the pictures, before the first is taken. */
  serve(keeper: RollKeeper): void {
    this.#keeper = keeper
  }

  readonly subscribe = (listener: () => void): (() => void) => {
    this.#listeners.add(listener)
    return () => this.#listeners.delete(listener)
  }

  readonly now = (): RollNow => this.#now

  /**
   * Takes one; answers whether it did: not while too much is on its way, nor before the camera shows anything. A series
   * leaves out a beat without a word.
   */
  async take(grab: () => Promise<Grabbed>, isOfSeries = false): Promise<boolean> {
    if (this.#unwritten >= mostUnwritten || this.#unkept >= mostUnkept) {
      if (!isOfSeries) this.#tell({ trouble: 'busy' })
      return false
    }
    this.#unwritten += 1
    this.#count(1)
    const name = this.#nextName()
    const grabbed = await grab().catch(() => undefined)
    if (grabbed === undefined) {
      this.#unwritten -= 1
      this.#count(-1)
      this.#tell({ trouble: 'failed' })
      return false
    }
    const number = this.#now.taken + 1
    this.#forgetOldest()
    this.#all = [...this.#all, { number, thumbnail: grabbed.thumbnail, photographId: undefined, hasStood: false, isOnItsWayOut: false }]
    this.#tell({ taken: number, trouble: undefined })
    const jpeg = grabbed.jpeg.finally(() => { this.#unwritten -= 1 }).catch(() => undefined)
    this.#before = this.#handIn(number, name, jpeg, this.#before)
    return true
  }

  /** Removes the last picture; one still on its way, as soon as it is kept. */
  async retake(): Promise<void> {
    const last = this.#now.shots.at(-1)
    if (last === undefined) return
    this.#change(last.number, { isOnItsWayOut: true })
    if (last.photographId !== undefined) await this.#takeBack(last.number, last.photographId)
  }

  /** Told which photographs stand in the survey: one that stood and does no longer is not shown, one that was had back is. */
  stand(standing: ReadonlySet<string>): void {
    this.#standing = standing
    this.#all = this.#all.map((shot) => (shot.photographId !== undefined && standing.has(shot.photographId) ? { ...shot, hasStood: true } : shot))
    this.#tell({})
  }

  /** One more on its way, or one less. Until all are kept the window is not closed without a word. */
  #count(by: 1 | -1): void {
    this.#unkept += by
    if (this.#unkept > 0) this.#letGo ??= holdWindow()
    else {
      this.#letGo?.()
      this.#letGo = undefined
    }
  }

  readonly #isShown = ({ photographId, hasStood, isOnItsWayOut }: Kept): boolean =>
    !isOnItsWayOut && (photographId === undefined || !hasStood || this.#standing.has(photographId))

  /** What is kept stands in the survey: here only the last ones are shown. */
  #forgetOldest(): void {
    const oldest = this.#all[0]
    if (this.#all.length < mostRemembered || oldest?.photographId === undefined || oldest.isOnItsWayOut) return
    oldest.thumbnail.close()
    this.#all = this.#all.slice(1)
  }

  #nextName(): string {
    const at = this.clock()
    const second = at.toISOString().slice(0, 19)
    this.#within = second === this.#second ? this.#within + 1 : 0
    this.#second = second
    return pictureName(this.place, at, this.#within)
  }

  async #handIn(number: number, name: string, written: Promise<Blob | undefined>, before: Promise<void>): Promise<void> {
    await before
    const jpeg = await written
    if (jpeg === undefined) return this.#lose(number, 'failed')
    const kept = this.#keeper?.handIn(new File([jpeg], name, { type: 'image/jpeg' }))
    return void kept?.then((photographId) => this.#keep(number, photographId), () => this.#lose(number, 'failed'))
  }

  async #keep(number: number, photographId: string | undefined): Promise<void> {
    if (photographId === undefined) return this.#lose(number, undefined)
    this.#count(-1)
    const isUnwanted = this.#all.some((shot) => shot.number === number && shot.isOnItsWayOut)
    this.#change(number, { photographId, hasStood: this.#standing.has(photographId) })
    if (isUnwanted) await this.#takeBack(number, photographId)
  }

  #lose(number: number, trouble: RollNow['trouble']): void {
    this.#count(-1)
    this.#all = this.#all.filter((shot) => shot.number !== number)
    this.#tell({ trouble })
  }

  async #takeBack(number: number, photographId: string): Promise<void> {
    await this.#keeper?.takeBack(photographId)
    await new Promise((follows) => { setTimeout(follows, followsMs) })
    this.#change(number, { isOnItsWayOut: false, hasStood: true })
  }

  #change(number: number, change: Partial<Kept>): void {
    this.#all = this.#all.map((shot) => (shot.number === number ? { ...shot, ...change } : shot))
    this.#tell({})
  }

  #tell(change: Partial<RollNow>): void {
    this.#now = { ...this.#now, ...change, shots: this.#all.filter(this.#isShown) }
    for (const listener of this.#listeners) listener()
  }
}
