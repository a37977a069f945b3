import type { QueryClient } from '@tanstack/react-query'
import { refuse } from '../../shared-logic/contract/refusal'
import type { MarkLayer } from '../../shared-logic/marking/marks'
import { largestPhotographBytes } from '../../shared-logic/photographs/limits'
import type { Photograph } from '../../shared-logic/survey/records'
import { call } from '../client/desk-client'
import { holdWindow } from '../parts/hold-window'
import type { CheckPlace } from './answer-queue'
import { IntakePace } from './intake-pace'
import { PhotographIntake, type Batch } from './photograph-intake'
import { photographNow, photographsWereKept, photographWasKept, photographWasRemoved } from './survey-cache'

export interface PhotographsNow {
  readonly batch: Batch | undefined
  /** Waiting to be replaced by the next one that comes to their place. */
  readonly replacing: readonly Photograph[]
  /** Just removed, the latest last: can be had back. */
  readonly removed: readonly Photograph[]
  /** Why the last act on a photograph failed. */
  readonly problem: unknown
  /** By id: of these it is said no more what may be wrong with them. Undefined until a screen says it first. */
  readonly read: ReadonlySet<string> | undefined
}

/** Desks keep at most 255 characters of a file's name; its end tells more than its beginning. */
const nameOf = (file: File): string => (file.name === '' ? 'pasted picture' : file.name).slice(-255)

const idsOf = (photographs: readonly Photograph[]): Set<string> => new Set(photographs.map(({ id }) => id))

const isOfPlaceOf = (a: Photograph) => (b: Photograph): boolean => a.checkId === b.checkId && a.position === b.position

/** The photographs of one survey on their way in, and acts on single ones. It outlives the screens: what began on one is found again on the next. */
export class SurveyPhotographs {
  #now: PhotographsNow = { batch: undefined, replacing: [], removed: [], problem: undefined, read: undefined }
  readonly #listeners = new Set<() => void>()
  readonly #pace: IntakePace
  readonly #intake: PhotographIntake
  readonly #turns = new Map<string, number>()
  #lastTurned: Promise<void> = Promise.resolve()
  #lastTaken: Promise<unknown> = Promise.resolve()
  #letGo: (() => void) | undefined

  constructor(private readonly client: QueryClient, private readonly surveyId: string) {
    this.#pace = new IntakePace(({ photographs, news }) => {
      if (photographs.length > 0) void photographsWereKept(client, surveyId, photographs)
      if (news !== undefined) this.#tell(news)
    })
    this.#intake = new PhotographIntake((batch) => {
      this.#hold(batch?.state === 'running')
      this.#pace.tell(batch)
    })
  }

  readonly subscribe = (listener: () => void): (() => void) => {
    this.#listeners.add(listener)
    return () => this.#listeners.delete(listener)
  }

  /** The same until something changes, a new one after. */
  readonly now = (): PhotographsNow => this.#now

  /** The screen is left: what was just removed is behind, and so is a replacing that nothing is on its way for. */
  readonly leave = (): void => this.#tell({ removed: [], ...(this.#letGo === undefined && { replacing: [] }) })

  readonly add = (files: readonly File[], place?: CheckPlace): void => this.#intake.add(files, (file, signal) => this.#send(place, 'file', file, signal).then(() => undefined))

  readonly take = (file: File, place?: CheckPlace): Promise<Photograph | undefined> =>
    new Promise((resolve) => {
      // One after the other: a series stands in the order it was taken.
      const inTurn = (each: File, signal: AbortSignal): Promise<void> => {
        const sent = this.#lastTaken.then(() => this.#send(place, 'camera', each, signal)).then(resolve)
        this.#lastTaken = sent.catch(() => undefined)
        return sent
      }
      this.#intake.add([file], inTurn, () => resolve(undefined))
    })

  readonly cancel = (): void => this.#intake.cancel()
  readonly tryAgain = (): void => this.#intake.tryAgain()
  readonly dismiss = (): void => this.#intake.dismiss()

  /** What stands when it is first looked at is no news. What comes after is, until it is read, on whichever screen. */
  readonly lookAt = (standing: readonly Photograph[]): void => {
    if (this.#now.read === undefined) this.#tell({ read: idsOf(standing) })
  }

  readonly note = (read: readonly Photograph[]): void => this.#tell({ read: new Set([...(this.#now.read ?? []), ...idsOf(read)]) })

  readonly describe = (photograph: Photograph, caption: string): void =>
    void this.#attempt(call('photographs.describe', { photographId: photograph.id, caption }).then((kept) => photographWasKept(this.client, this.surveyId, kept.photograph)))

  readonly mark = async (photograph: Photograph, layer: MarkLayer): Promise<void> => {
    const kept = await call('photographs.mark', { photographId: photograph.id, layer })
    await photographWasKept(this.client, this.surveyId, kept.photograph)
  }

  /** Turns struck faster than they are kept add up. */
  readonly turn = (photograph: Photograph, quarters: 1 | -1): void => {
    const { id } = photograph
    const before = this.#turns.get(id) ?? (photographNow(this.client, this.surveyId, id) ?? photograph).quarterTurns
    const quarterTurns = (before + quarters + 4) % 4
    this.#turns.set(id, quarterTurns)
    const turned = this.#lastTurned.then(async () => {
      const kept = await call('photographs.turn', { photographId: id, quarterTurns })
      await photographWasKept(this.client, this.surveyId, kept.photograph)
    })
    this.#lastTurned = turned.catch(() => undefined).then(() => {
      if (this.#turns.get(id) === quarterTurns) this.#turns.delete(id)
    })
    void this.#attempt(turned)
  }

  /** That it was added just before is news no more. */
  readonly takeBack = (photograph: Photograph): Promise<void> => this.#remove(photograph).then(() => this.#intake.dismissWhole())

  readonly restore = (): void => {
    const latest = this.#now.removed.at(-1)
    if (latest === undefined) return
    this.#haveBack([latest], call('photographs.restore', { photographId: latest.id }).then(({ photograph }) => [photograph]))
  }

  readonly restoreAll = (): void => {
    const { removed } = this.#now
    if (removed.length === 0) return
    this.#haveBack(removed, call('photographs.restoreAll', { photographIds: removed.map(({ id }) => id) }).then(({ photographs }) => photographs))
  }

  /** The way back from these removals is wanted no more. */
  readonly forgetRemoved = (): void => this.#tell({ removed: [] })

  readonly takeAgain = (photograph: Photograph): void => this.#tell({ replacing: [...this.#now.replacing.filter(({ id }) => id !== photograph.id), photograph] })

  #remove(photograph: Photograph): Promise<void> {
    return this.#attempt(
      call('photographs.remove', { photographId: photograph.id }).then(() => {
        this.#tell({ removed: [...this.#now.removed.filter(({ id }) => id !== photograph.id), photograph] })
        return photographWasRemoved(this.client, this.surveyId, photograph.id)
      }),
    )
  }

  /** Offered no more at once, so that the next press means the one before; what did not come back is offered again. */
  #haveBack(those: readonly Photograph[], asked: Promise<readonly Photograph[]>): void {
    const before = this.#now.removed
    const rank = (each: Photograph): number => (before.includes(each) ? before.indexOf(each) : before.length)
    this.#tell({ removed: before.filter((each) => !those.includes(each)) })
    const back = asked.catch((problem: unknown) => {
      this.#tell({ removed: [...those, ...this.#now.removed.filter((each) => !those.includes(each))].toSorted((a, b) => rank(a) - rank(b)) })
      throw problem
    })
    void this.#attempt(back.then((photographs) => photographsWereKept(this.client, this.surveyId, photographs)))
  }

  #tell(change: Partial<PhotographsNow>): void {
    this.#now = { ...this.#now, ...change }
    for (const listener of this.#listeners) listener()
  }

  /** While something is on its way the window is not closed without a word. */
  #hold(isHeld: boolean): void {
    if (isHeld) this.#letGo ??= holdWindow()
    else {
      this.#letGo?.()
      this.#letGo = undefined
    }
  }

  #attempt(work: Promise<void>): Promise<void> {
    this.#tell({ problem: undefined })
    return work.catch((problem: unknown) => this.#tell({ problem }))
  }

  async #send(place: CheckPlace | undefined, source: Photograph['source'], file: File, signal: AbortSignal): Promise<Photograph> {
    if (file.size > largestPhotographBytes) refuse('photograph.too-large', { name: nameOf(file), megabytes: largestPhotographBytes / 1_000_000 })
    const bytes = new Uint8Array(await file.arrayBuffer())
    const { photograph, alreadyThere } = await call('photographs.add', { surveyId: this.surveyId, ...place, fileName: nameOf(file), source }, { bytes, signal })
    if (alreadyThere) refuse(place === undefined ? 'photograph.already-in' : 'photograph.already-there', { name: nameOf(file), kept: photograph.fileName })
    if (source === 'file') this.#pace.keep(photograph)
    else await photographWasKept(this.client, this.surveyId, photograph)
    this.#replaceBy(photograph)
    return photograph
  }

  #replaceBy(photograph: Photograph): void {
    const old = this.#now.replacing.find(isOfPlaceOf(photograph))
    if (old === undefined) return
    this.#tell({ replacing: this.#now.replacing.filter((each) => each !== old) })
    void this.#remove(old)
  }
}
