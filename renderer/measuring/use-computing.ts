import { useEffect, useRef, useState } from 'react'
import type { RefusalData } from '../../shared-logic/contract/refusal'
import type { MeasuredArea } from '../../shared-logic/measuring/measurement'
import type { Wanted } from './board'
import type { FromWorker } from './messages'
import { startWorker, type Computing, type StartComputing } from './start-worker'

/** Where the computing runs, and how a shown picture gets there. */
export interface Engine {
  readonly start: StartComputing
  readonly bitmapOf: (image: HTMLImageElement) => Promise<ImageBitmap>
}

export const browserEngine: Engine = { start: startWorker, bitmapOf: (image) => createImageBitmap(image) }

export interface Computed {
  readonly state: 'idle' | 'working' | 'looking' | 'stopped' | 'broken'
  /** SVG path data of what counts as outlined, px of the original; the one before while the next is worked out. */
  readonly outline: string
  /** Of what stands on the board now; undefined while that is being worked out. */
  readonly result: MeasuredArea | undefined
  readonly refusal: RefusalData | undefined
  /** Ends what is under way. */
  readonly stop: () => void
  /** Starts afresh, after a stop or when it broke. */
  readonly restart: () => void
}

/** The last that was heard, and which wish it answers. */
interface Heard {
  readonly of: Wanted | undefined
  readonly outline: string
  readonly last: FromWorker | undefined
}

const outlineAfter = (before: string, message: FromWorker): string => {
  if (message.kind === 'outlined') return message.outline
  // What is wrong with an outline shows on it; a grey picture has none.
  return message.kind === 'refused' && message.refusal.code === 'measure.no-colour' ? '' : before
}

const stateOf = (last: FromWorker | undefined): Computed['state'] => {
  if (last?.kind === 'looking') return 'looking'
  return last?.kind === 'measured' || last?.kind === 'refused' ? 'idle' : 'working'
}

/** Has what is on the board worked out beside the window. Answers to an older wish are not heard. */
export const useComputing = (image: HTMLImageElement | undefined, wanted: Wanted | undefined, engine: Engine): Computed => {
  const [heard, setHeard] = useState<Heard>({ of: undefined, outline: '', last: undefined })
  const [halted, setHalted] = useState<'stopped' | 'broken'>()
  const [starts, setStarts] = useState(0)
  const [computing, setComputing] = useState<Computing>()
  const newest = useRef<{ readonly turn: number; readonly of: Wanted | undefined }>({ turn: 0, of: undefined })

  useEffect(() => {
    if (image === undefined) return undefined
    let started: Computing | undefined
    let isLeft = false
    const fail = (): void => { if (!isLeft) setHalted('broken') }
    const hear = (message: FromWorker): void => {
      const { turn, of } = newest.current
      if (!isLeft && message.turn === turn) setHeard((before) => ({ of, outline: outlineAfter(before.outline, message), last: message }))
    }
    engine.bitmapOf(image).then((bitmap) => {
      if (isLeft) return
      started = engine.start(hear, fail)
      started.send({ kind: 'picture', bitmap }, [bitmap])
      setComputing(started)
    }).catch(fail)
    return () => {
      isLeft = true
      started?.end()
      setComputing(undefined)
    }
  }, [image, engine, starts])

  useEffect(() => {
    newest.current = { turn: newest.current.turn + 1, of: wanted }
    if (wanted !== undefined) computing?.send({ kind: 'measure', turn: newest.current.turn, ...wanted })
  }, [wanted, computing])

  const last = heard.of === wanted ? heard.last : undefined
  return {
    state: halted ?? (wanted === undefined ? 'idle' : stateOf(last)),
    outline: wanted === undefined ? '' : heard.outline,
    result: wanted !== undefined && last?.kind === 'measured' ? last.result : undefined,
    refusal: wanted !== undefined && last?.kind === 'refused' ? last.refusal : undefined,
    stop: () => {
      computing?.end()
      setComputing(undefined)
      setHalted('stopped')
    },
    restart: () => {
      setHalted(undefined)
      setHeard({ of: undefined, outline: '', last: undefined })
      setStarts((before) => before + 1)
    },
  }
}
