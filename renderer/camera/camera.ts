import { problemOf, type CameraProblem } from './camera-problem'
import { listCameras, openStream, type CameraDevice } from './open-stream'
import { isSameResolution, type Resolution } from './resolutions'
import { stillPhotographOf, type StillPhotograph } from './still-photograph'

/** How far the camera is zoomed, in the device's own measure. */
export interface Zoom {
  readonly min: number
  readonly max: number
  readonly step: number
  readonly value: number
}

export interface LiveCamera {
  readonly stream: MediaStream
  readonly deviceId: string
  readonly largest: Resolution
  readonly resolution: Resolution
  /** A resolution that was asked for and that the camera does not give. */
  readonly notGiven: Resolution | undefined
  /** Undefined where the camera has no light. */
  readonly isLit: boolean | undefined
  /** Undefined where it cannot zoom. */
  readonly zoom: Zoom | undefined
  /** The camera's own, larger photograph; taken while it is wanted. */
  readonly still: StillPhotograph | undefined
  readonly isStillWanted: boolean
}

export type CameraState = { readonly is: 'off' | 'asking' } | { readonly is: 'live'; readonly live: LiveCamera } | { readonly is: 'problem'; readonly problem: CameraProblem }

export interface CameraNow {
  readonly state: CameraState
  readonly devices: readonly CameraDevice[]
}

const sizeOf = (track: MediaStreamTrack): Resolution => {
  const { width = 0, height = 0 } = track.getSettings()
  return { widthPx: width, heightPx: height }
}

/** Browsers without it offer neither light nor zoom. */
const abilitiesOf = (track: MediaStreamTrack): MediaTrackCapabilities => (typeof track.getCapabilities === 'function' ? track.getCapabilities() : {})

const zoomOf = (track: MediaStreamTrack): Zoom | undefined => {
  const { min, max, step } = abilitiesOf(track).zoom ?? {}
  if (min === undefined || max === undefined || max <= min) return undefined
  return { min, max, step: step !== undefined && step > 0 ? step : (max - min) / 100, value: track.getSettings().zoom ?? min }
}

const switchOff = (stream: MediaStream | undefined): void => {
  for (const track of stream?.getTracks() ?? []) track.stop()
}

/**
 * One camera of this machine, switched on and off, and what it can do. Permission is asked for by `open` alone. What
 * comes late from an opening that has been given up is switched off at once.
 */
export class Camera {
  #now: CameraNow = { state: { is: 'off' }, devices: [] }
  #stream: MediaStream | undefined
  /** Counts openings and closings. */
  #turn = 0
  #lastDevice: string | undefined
  readonly #listeners = new Set<() => void>()

  readonly subscribe = (listener: () => void): (() => void) => {
    this.#listeners.add(listener)
    return () => this.#listeners.delete(listener)
  }

  /** The same object until something changes, a new one after. */
  readonly now = (): CameraNow => this.#now

  /** Switches a camera on: the one named, else the one of this label where there is one, else whichever the system gives. */
  async open(wanted: { readonly deviceId?: string | undefined; readonly label?: string } = {}): Promise<void> {
    const turn = this.#begin()
    try {
      const deviceId = wanted.deviceId ?? this.#idOf(await listCameras(), wanted.label)
      if (turn !== this.#turn) return
      const stream = await openStream(deviceId)
      if (turn !== this.#turn) return switchOff(stream)
      await this.#show(turn, stream)
      // Labels are told only once permission is given.
      const remembered = deviceId === undefined ? this.#idOf(this.#now.devices, wanted.label) : undefined
      if (turn === this.#turn && remembered !== undefined && remembered !== this.#lastDevice) await this.open({ deviceId: remembered })
    } catch (error) {
      if (turn === this.#turn) await this.#fail(problemOf(error))
    }
  }

  /** Switches it off. */
  close(): void {
    this.#turn += 1
    this.#release()
    this.#set({ state: { is: 'off' } })
  }

  /** Off while nobody looks; `open()` without a wish wakes the same one again. */
  readonly reopen = (): Promise<void> => this.open({ deviceId: this.#lastDevice })

  /** Cameras come and go: one that was missing is switched on, one that is gone is said to be. */
  readonly devicesChanged = async (): Promise<void> => {
    const devices = await listCameras()
    const { state } = this.#now
    this.#set({ devices })
    const isThere = devices.some(({ id }) => id === this.#lastDevice)
    if (state.is === 'live' && state.live.deviceId !== '' && devices.every(({ id }) => id !== state.live.deviceId)) await this.#fail('unplugged')
    else if (state.is === 'problem' && ((state.problem === 'unplugged' && isThere) || (state.problem === 'none' && devices.length > 0))) await this.reopen()
  }

  /** A smaller live picture, or the largest again; what the camera does not give is said, and what it gives instead is shown. */
  async setResolution(wanted: Resolution, isStillWanted: boolean): Promise<void> {
    const track = this.#track()
    if (track === undefined) return
    const { widthPx, heightPx } = wanted
    await track.applyConstraints({ width: { exact: widthPx }, height: { exact: heightPx } }).catch(() => track.applyConstraints({ width: { ideal: widthPx }, height: { ideal: heightPx } })).catch(() => undefined)
    const resolution = sizeOf(track)
    this.#changeLive({ resolution, isStillWanted, notGiven: isSameResolution(resolution, wanted) ? undefined : wanted, zoom: zoomOf(track) })
  }

  async setLight(isLit: boolean): Promise<void> {
    const track = this.#track()
    await track?.applyConstraints({ advanced: [{ torch: isLit }] }).then(() => this.#changeLive({ isLit }), () => undefined)
  }

  async setZoom(zoom: number): Promise<void> {
    const track = this.#track()
    const before = track && zoomOf(track)
    if (before === undefined) return
    // Shown where the hand has it; what the camera took stands when the hand is still.
    this.#changeLive({ zoom: { ...before, value: zoom } })
    await track?.applyConstraints({ advanced: [{ zoom }] }).catch(() => this.#changeLive({ zoom: before }))
  }

  #idOf(devices: readonly CameraDevice[], label: string | undefined): string | undefined {
    return label === undefined || label === '' ? undefined : devices.find((each) => each.label === label)?.id
  }

  #track(): MediaStreamTrack | undefined {
    return this.#stream?.getVideoTracks()[0]
  }

  #begin(): number {
    this.#turn += 1
    this.#release()
    this.#set({ state: { is: 'asking' } })
    return this.#turn
  }

  #release(): void {
    switchOff(this.#stream)
    this.#stream = undefined
  }

  async #show(turn: number, stream: MediaStream): Promise<void> {
    this.#stream = stream
    const [track] = stream.getVideoTracks()
    if (track === undefined) throw new Error('a stream without a picture')
    // Told when the camera is pulled out or the system takes it away; not when it is switched off here.
    track.addEventListener('ended', () => { if (turn === this.#turn) void this.#fail('unplugged') })
    const devices = await listCameras()
    if (turn !== this.#turn) return
    const largest = sizeOf(track)
    const deviceId = track.getSettings().deviceId ?? ''
    this.#lastDevice = deviceId
    this.#set({
      devices,
      state: { is: 'live', live: { stream, deviceId, largest, resolution: largest, notGiven: undefined, isLit: abilitiesOf(track).torch === true ? track.getSettings().torch === true : undefined, zoom: zoomOf(track), still: undefined, isStillWanted: true } },
    })
    void stillPhotographOf(track, largest).then((still) => { if (turn === this.#turn && still !== undefined) this.#changeLive({ still }) })
  }

  async #fail(problem: CameraProblem): Promise<void> {
    this.#turn += 1
    this.#release()
    this.#set({ state: { is: 'problem', problem } })
    this.#set({ devices: await listCameras() })
  }

  #changeLive(change: Partial<LiveCamera>): void {
    const { state } = this.#now
    if (state.is === 'live') this.#set({ state: { is: 'live', live: { ...state.live, ...change } } })
  }

  #set(change: Partial<CameraNow>): void {
    this.#now = { ...this.#now, ...change }
    for (const listener of this.#listeners) listener()
  }
}
