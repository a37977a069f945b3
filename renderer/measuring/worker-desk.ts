import { Refusal } from '../../shared-logic/contract/refusal'
import type { Pixels } from '../../shared-logic/measuring/pixels'
import type { FromWorker, ToWorker } from './messages'
import { pictureWork, type PictureWork } from './picture-work'

type Wish = Extract<ToWorker, { kind: 'measure' }>

/** A setting that is dragged rests this long before the area is worked out, so that nothing keeps the next outline waiting. */
const restMs = 60

/** Lets messages that came meanwhile be heard. */
const pause = (ms = 0): Promise<void> => new Promise((resolve) => { setTimeout(resolve, ms) })

/**
 * Answers wishes one at a time and only the newest: first the outline, roughly where it was found, then, if none came meanwhile, as it counts, and the area.
 * Runs in the worker; `tell` is how it answers, `read` how a picture becomes pixels.
 */
export const workerDesk = (tell: (message: FromWorker) => void, read: (bitmap: ImageBitmap) => Pixels): ((message: ToWorker) => void) => {
  let work: PictureWork | undefined
  let newest: Wish | undefined
  /** The last that was begun: it is not begun again. */
  let taken: Wish | undefined
  let isBusy = false

  const answer = async (wish: Wish, on: PictureWork): Promise<void> => {
    const { turn, given, isScaled } = wish
    if (on.isSlow(given)) {
      tell({ kind: 'looking', turn })
      await pause()
      if (newest !== wish) return
    }
    const isFinding = given.outline.by === 'finder'
    tell({ kind: 'outlined', turn, outline: on.quickOutline(given) })
    await pause(isFinding ? restMs : 0)
    if (newest !== wish) return
    if (isFinding) {
      tell({ kind: 'outlined', turn, outline: on.outline(given) })
      await pause()
      if (newest !== wish) return
    }
    tell({ kind: 'measured', turn, result: isScaled ? on.measure(given) : undefined })
  }
  const take = (): Wish | undefined => {
    const next = newest === taken ? undefined : newest
    if (work !== undefined) taken = newest
    return next
  }
  const goOn = async (): Promise<void> => {
    if (isBusy) return
    isBusy = true
    for (let wish = take(); wish !== undefined && work !== undefined; wish = take()) {
      try {
        await answer(wish, work)
      } catch (error) {
        if (!(error instanceof Refusal)) throw error
        tell({ kind: 'refused', turn: wish.turn, refusal: error.data })
      }
    }
    isBusy = false
  }
  return (message) => {
    if (message.kind === 'picture') {
      work = pictureWork(read(message.bitmap))
      message.bitmap.close()
    } else newest = message
    // Thrown outside the promise, so that whoever started the worker hears of it.
    goOn().catch((error: unknown) => { setTimeout(() => { throw error }) })
  }
}
