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

type State = 'idle' | 'working' | 'looking' | 'stopped' | 'broken'

export interface Computed {
  readonly state: State
  /** SVG path data of what counts as outlined, px of the original. */
  readonly outline: string
  /** Of what stands on the board now; undefined while that is being worked out. */
  readonly result: MeasuredArea | undefined
  readonly refusal: RefusalData | undefined
  /** Ends what is under way. */
  readonly stop: () => void
  /** Starts afresh, after a stop or when it broke. */
  readonly restart: () => void
}

interface Known {
  readonly state: State
  readonly outline: string
  readonly result: MeasuredArea | undefined
  readonly refusal: RefusalData | undefined
}

const nothing: Known = { state: 'idle', outline: '', result: undefined, refusal: undefined }

const heard = (known: Known, message: FromWorker): Known => {
  switch (message.kind) {
    case 'looking': return { ...known, state: 'looking' }
    case 'outlined': return { ...known, state: 'working', outline: message.outline }
    case 'measured': return { ...known, state: 'idle', result: message.result, refusal: undefined }
    // The outline stays to be seen: what is wrong with it shows there.
    case 'refused': return { ...known, state: 'idle', result: undefined, refusal: message.refusal, ...(message.refusal.code === 'measure.no-colour' && { outline: '' }) }
    default: return known
  }
}

/** Has what is on the board worked out beside the window. Answers to an older wish are not heard. */
export const useComputing = (image: HTMLImageElement | undefined, wanted: Wanted | undefined, engine: Engine): Computed => {
  const [known, setKnown] = useState<Known>(nothing)
  const [start, setStart] = useState(0)
  const [computing, setComputing] = useState<Computing>()
  const turn = useRef(0)

  useEffect(() => {
    if (image === undefined) return undefined
    let started: Computing | undefined
    let isLeft = false
    const fail = (): void => { if (!isLeft) setKnown((before) => ({ ...before, state: 'broken', result: undefined })) }
    const hear = (message: FromWorker): void => { if (!isLeft && message.turn === turn.current) setKnown((before) => heard(before, message)) }
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
  }, [image, engine, start])

  useEffect(() => {
    turn.current += 1
    if (wanted === undefined) setKnown((before) => ({ ...nothing, state: before.state === 'broken' ? 'broken' : 'idle' }))
    else if (computing !== undefined) {
      setKnown((before) => ({ ...before, state: 'working', result: undefined, refusal: undefined }))
      computing.send({ kind: 'measure', turn: turn.current, ...wanted })
    }
  }, [wanted, computing])

  return {
    ...known,
    stop: () => {
      computing?.end()
      setComputing(undefined)
      setKnown((before) => ({ ...before, state: 'stopped' }))
    },
    restart: () => {
      setKnown(nothing)
      setStart((before) => before + 1)
    },
  }
}
