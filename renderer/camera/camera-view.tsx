import { useCallback, useEffect, useLayoutEffect, useRef, useState, useSyncExternalStore, type ReactNode } from 'react'
import { Button as AriaButton } from 'react-aria-components'
import { say } from '../../shared-logic/words/say'
import { Button } from '../parts/button'
import { Sheet } from '../parts/sheet'
import { useSettings } from '../parts/use-settings'
import { useWords } from '../parts/use-words'
import { useKeepSettings } from '../settings/use-keep-settings'
import { useSingleKeys } from '../survey/use-single-keys'
import { CameraControls, nameOfCamera } from './camera-controls'
import { CameraStage, type Shown } from './camera-stage'
import style from './camera-view.module.css'
import { grabPicture, type GrabPicture } from './grab-picture'
import { Roll } from './roll'
import { ShotStrip } from './shot-strip'
import { useCamera } from './use-camera'
import { seriesLength, seriesPerSecond, useSeries } from './use-series'
import { useShutterKeys } from './use-shutter-keys'

interface CameraViewProps {
  /** What is photographed, 'Oil condition, left front': heads the view and begins the files' names. */
  readonly place: string
  /** Hands a picture in: answers its photograph's id once it is kept, undefined when it was let go. Called after the view is closed, too. */
  readonly onPicture: (file: File) => Promise<string | undefined>
  /** Takes the photograph out again; settled when that is done or has failed. */
  readonly onTakeBack: (photographId: string) => Promise<void>
  /** The photographs that stand now, by id. */
  readonly standing: ReadonlySet<string>
  /** How the taking in goes. */
  readonly news: ReactNode
  readonly onClose: () => void
  readonly grab?: GrabPicture
}

/** The camera, large: live picture, shutter, series, retake; every picture goes straight to where it belongs. */
export const CameraView = ({ place, onPicture, onTakeBack, standing, news, onClose, grab = grabPicture }: CameraViewProps) => {
  const said = useWords().screens.camera
  const remembered = useSettings().camera
  const { keep } = useKeepSettings()
  const { camera, now } = useCamera(remembered)
  const shutter = useRef<HTMLButtonElement>(null)
  const [shown, setShown] = useState<Shown>()
  const [flash, setFlash] = useState(0)
  const { roll, rolled } = useRoll(place, onPicture, onTakeBack, standing)
  const live = now.state.is === 'live' ? now.state.live : undefined
  const isReady = live !== undefined && live.stream === shown?.stream
  const index = now.devices.findIndex(({ id }) => id === live?.deviceId)
  const device = now.devices[index]

  const take = useCallback(
    async (isAlone: boolean): Promise<boolean> => {
      if (!isReady) return false
      const did = await roll.take(() => grab(shown.video, isAlone && live.isStillWanted ? live.still : undefined), !isAlone)
      if (did && isAlone) setFlash((count) => count + 1)
      if (did && device !== undefined && device.label !== '' && device.label !== remembered) keep({ camera: device.label })
      return did
    },
    [isReady, roll, grab, live, shown, device, remembered, keep],
  )
  const series = useSeries(() => take(false), isReady)
  const takeOne = (): void => void take(true)
  const retake = (): void => {
    void roll.retake()
    shutter.current?.focus()
  }
  const [areLettersOn] = useSingleKeys()
  useShutterKeys({ take: takeOne, retake, series: series.toggle }, areLettersOn)
  useLayoutEffect(() => {
    if (isReady) shutter.current?.focus()
  }, [isReady])

  const trouble = rolled.trouble === 'busy' ? said.notTaken : rolled.trouble === 'failed' ? said.notMade : undefined
  return (
    <Sheet
      title={say(said.title, { place }, 'metric')} onClose={onClose}
      actions={
        <div className={style.foot}>
          <Button isDisabled={rolled.shots.length === 0} onPress={retake} aria-keyshortcuts="R">{said.retake}</Button>
          <Button isDisabled={!isReady} onPress={series.toggle} aria-keyshortcuts="B">{series.isRunning ? say(said.stopSeries, { count: series.taken }, 'metric') : said.series}</Button>
          <AriaButton ref={shutter} className={style.shutter ?? ''} isDisabled={!isReady} onPress={takeOne} data-shutter="" aria-keyshortcuts="Space T"><span className={style.ring} aria-hidden="true" />{said.take}</AriaButton>
          <Button onPress={onClose}>{said.done}</Button>
        </div>
      }
    >
      <div className={style.view}>
        <div className={style.main}>
          <CameraStage state={now.state} name={device ? nameOfCamera(said, device, index) : said.device} onShows={setShown} flash={flash} onTryAgain={() => void camera.reopen()} />
          <ShotStrip shots={rolled.shots} />
          <output className="visually-hidden">{rolled.taken > 0 && say(said.taken, { number: rolled.taken }, 'metric')}</output>
        </div>
        <div className={style.side}>
          <div className={style.news}>
            {trouble !== undefined && <p role="alert" className={style.trouble}>{trouble}</p>}
            {news}
          </div>
          <CameraControls camera={camera} now={now} />
          <p className={style.hint}>{say(said.seriesHint, { rate: seriesPerSecond, count: seriesLength }, 'metric')}</p>
          <p className={style.keys}>{areLettersOn ? said.keysHint : said.spaceHint}</p>
        </div>
      </div>
    </Sheet>
  )
}

const useRoll = (place: string, handIn: CameraViewProps['onPicture'], takeBack: CameraViewProps['onTakeBack'], standing: ReadonlySet<string>) => {
  const [roll] = useState(() => new Roll(place))
  const rolled = useSyncExternalStore(roll.subscribe, roll.now)
  useEffect(() => {
    roll.serve({ handIn, takeBack })
  })
  useEffect(() => {
    roll.stand(standing)
  }, [roll, standing])
  return { roll, rolled }
}
