import { say } from '../../shared-logic/words/say'
import type { Words } from '../../shared-logic/words/en'
import { Slider } from '../measuring/slider'
import { SelectField } from '../parts/select-field'
import { Switch } from '../parts/switch'
import { useWords } from '../parts/use-words'
import type { Camera, CameraNow, LiveCamera, Zoom } from './camera'
import style from './camera-view.module.css'
import type { CameraDevice } from './open-stream'
import { isSameResolution, keyOfResolution, pixelsOf, resolutionSteps, type Resolution } from './resolutions'

interface CameraControlsProps {
  readonly camera: Camera
  readonly now: CameraNow
}

/** What can be set: which camera, how large; its light and zoom only where it has them. */
export const CameraControls = ({ camera, now: { state, devices } }: CameraControlsProps) => {
  const said = useWords().screens.camera
  const live = state.is === 'live' ? state.live : undefined
  return (
    <div className={style.controls}>
      {devices.length > 0 && !(state.is === 'problem' && state.problem === 'denied') && (
        <SelectField
          label={said.device} placeholder={said.choose} value={live?.deviceId} onChange={(deviceId) => void camera.open({ deviceId })}
          options={devices.map((device, index) => ({ value: device.id, label: nameOfCamera(said, device, index) }))}
        />
      )}
      {live && <ResolutionField camera={camera} live={live} />}
      {live?.isLit !== undefined && <Switch label={said.light} isOn={live.isLit} onChange={(isLit) => void camera.setLight(isLit)} />}
      {live?.zoom && <Slider label={said.zoom} {...live.zoom} says={say(said.zoomAt, { percent: percentOf(live.zoom) }, 'metric')} onChange={(zoom) => void camera.setZoom(zoom)} />}
    </div>
  )
}

export const nameOfCamera = (said: Words['screens']['camera'], { label }: CameraDevice, index: number): string => (label === '' ? say(said.unnamed, { number: index + 1 }, 'metric') : label)

const percentOf = ({ min, max, value }: Zoom): number => Math.round(((value - min) / (max - min)) * 100)

const megapixelsOf = (size: Resolution): string => {
  const megapixels = pixelsOf(size) / 1e6
  return megapixels < 9.95 ? megapixels.toFixed(1) : String(Math.round(megapixels))
}

const ofStill = 'still'

const ResolutionField = ({ camera, live }: { readonly camera: Camera; readonly live: LiveCamera }) => {
  const said = useWords().screens.camera
  const labelOf = (size: Resolution): string => say(said.sizeAndMegapixels, { width: size.widthPx, height: size.heightPx, megapixels: megapixelsOf(size) }, 'metric')
  const plain = (size: Resolution): string => say(said.size, { width: size.widthPx, height: size.heightPx }, 'metric')
  const steps = resolutionSteps(live.largest)
  const given = steps.some((step) => isSameResolution(step, live.resolution)) ? steps : [...steps, live.resolution]
  const options = [...(live.still ? [{ value: ofStill, label: labelOf(live.still.size) }] : []), ...given.map((size) => ({ value: keyOfResolution(size), label: labelOf(size) }))]
  const choose = (value: string): void => {
    const size = value === ofStill ? live.largest : given.find((each) => keyOfResolution(each) === value)
    if (size) void camera.setResolution(size, value === ofStill)
  }
  return (
    <SelectField
      label={said.resolution} options={options} value={live.still && live.isStillWanted ? ofStill : keyOfResolution(live.resolution)} onChange={choose}
      hint={live.notGiven && say(said.notGiven, { wanted: plain(live.notGiven), given: plain(live.resolution) }, 'metric')}
    />
  )
}
