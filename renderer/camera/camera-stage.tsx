import { useEffect, useRef } from 'react'
import { say } from '../../shared-logic/words/say'
import { Button } from '../parts/button'
import { useWords } from '../parts/use-words'
import type { CameraState } from './camera'
import type { CameraProblem } from './camera-problem'
import style from './camera-view.module.css'

/** A live picture that can be taken from. */
export interface Shown {
  readonly stream: MediaStream
  readonly video: HTMLVideoElement
}

interface CameraStageProps {
  readonly state: CameraState
  readonly name: string
  /** Told when the live picture shows its first frame; the same function every time. */
  readonly onShows: (shown: Shown) => void
  /** Changes with every single picture taken: the frame lights up. */
  readonly flash: number
  readonly onTryAgain: () => void
}

/** The live picture, or why there is none and what to do. */
export const CameraStage = ({ state, name, onShows, flash, onTryAgain }: CameraStageProps) => {
  const said = useWords().screens.camera
  return (
    <div className={style.stage} style={{ aspectRatio: state.is === 'live' ? state.live.resolution.widthPx / state.live.resolution.heightPx : 4 / 3 }}>
      {state.is === 'live' && <LivePicture stream={state.live.stream} label={say(said.live, { camera: name }, 'metric')} onShows={onShows} />}
      {state.is === 'live' && flash > 0 && <div key={flash} className={style.flash} aria-hidden="true" />}
      {state.is === 'problem' && <Problem problem={state.problem} onTryAgain={onTryAgain} />}
      {(state.is === 'asking' || state.is === 'off') && <p className={style.told}>{said[state.is]}</p>}
    </div>
  )
}

interface LivePictureProps {
  readonly stream: MediaStream
  readonly label: string
  readonly onShows: CameraStageProps['onShows']
}

const LivePicture = ({ stream, label, onShows }: LivePictureProps) => {
  const video = useRef<HTMLVideoElement>(null)
  useEffect(() => {
    const { current } = video
    if (current === null) return undefined
    const first = (): void => onShows({ stream, video: current })
    current.addEventListener('loadeddata', first)
    current.srcObject = stream
    return () => {
      current.removeEventListener('loadeddata', first)
      current.srcObject = null
    }
  }, [stream, onShows])
  return <video ref={video} className={style.video} aria-label={label} muted autoPlay playsInline />
}

const Problem = ({ problem, onTryAgain }: { readonly problem: CameraProblem; readonly onTryAgain: () => void }) => {
  const said = useWords().screens.camera
  const sentence = problem === 'denied' ? said.problems.denied[window.bunkwright === undefined ? 'browser' : 'window'] : said.problems[problem]
  return (
    <div role="alert" className={style.told}>
      <p>{sentence}</p>
      {problem !== 'not offered' && <Button onPress={onTryAgain}>{said.tryAgain}</Button>}
    </div>
  )
}
