import { vi } from 'vitest'

/** What one camera can do, as its track would tell it. */
export interface FakeAbilities {
  readonly widthPx?: number
  readonly heightPx?: number
  readonly torch?: boolean
  readonly zoom?: { readonly min: number; readonly max: number; readonly step: number }
  /** Widths it refuses to give exactly. */
  readonly refusesWidths?: readonly number[]
}

const error = (name: string): DOMException => new DOMException('as the browser says it', name)

export class FakeTrack extends EventTarget {
  readyState: 'live' | 'ended' = 'live'
  readonly applied: MediaTrackConstraints[] = []
  #settings: MediaTrackSettings
  constructor(readonly deviceId: string, private readonly abilities: FakeAbilities) {
    super()
    const { widthPx = 1280, heightPx = 720, zoom, torch } = abilities
    this.#settings = { deviceId, width: widthPx, height: heightPx, ...(zoom && { zoom: zoom.min }), ...(torch === true && { torch: false }) }
  }
  getSettings = (): MediaTrackSettings => this.#settings
  getCapabilities = (): MediaTrackCapabilities => ({ ...(this.abilities.torch === true && { torch: true }), ...(this.abilities.zoom && { zoom: this.abilities.zoom }) })
  applyConstraints = async (wanted: MediaTrackConstraints): Promise<void> => {
    this.applied.push(wanted)
    const exact = typeof wanted.width === 'object' ? wanted.width.exact : undefined
    if (exact !== undefined && this.abilities.refusesWidths?.includes(exact) === true) throw error('OverconstrainedError')
    if (exact !== undefined && typeof wanted.height === 'object') this.#settings = { ...this.#settings, width: exact, height: wanted.height.exact ?? 0 }
    for (const each of wanted.advanced ?? []) this.#settings = { ...this.#settings, ...(typeof each.zoom === 'number' && { zoom: each.zoom }), ...(typeof each.torch === 'boolean' && { torch: each.torch }) }
  }
  stop = (): void => {
    this.readyState = 'ended'
  }
}

/** The cameras of a machine, as the browser offers them to the page. */
export class FakeMachine extends EventTarget {
  readonly asked: MediaStreamConstraints[] = []
  readonly tracks: FakeTrack[] = []
  /** What the next openings are refused with, by name; undefined opens. */
  refuses: string | undefined
  /** Holds openings back until told. */
  until: Promise<void> = Promise.resolve()
  isAllowed = true

  constructor(public cameras: Readonly<Record<string, FakeAbilities>>) {
    super()
  }

  get track(): FakeTrack {
    const last = this.tracks.at(-1)
    if (last === undefined) throw new Error('no camera was opened')
    return last
  }

  readonly enumerateDevices = async (): Promise<unknown[]> =>
    Object.keys(this.cameras).map((name) => ({ kind: 'videoinput', deviceId: this.isAllowed ? `id of ${name}` : '', label: this.isAllowed ? name : '', groupId: '' }))

  readonly getUserMedia = async (wanted: MediaStreamConstraints): Promise<unknown> => {
    this.asked.push(wanted)
    await this.until
    if (this.refuses !== undefined) throw error(this.refuses)
    const video = typeof wanted.video === 'object' ? wanted.video : {}
    const exact = typeof video.deviceId === 'object' && 'exact' in video.deviceId ? video.deviceId.exact : undefined
    const names = Object.keys(this.cameras)
    const name = exact === undefined ? names[0] : names.find((each) => `id of ${each}` === exact)
    if (name === undefined) throw error(exact === undefined ? 'NotFoundError' : 'OverconstrainedError')
    this.isAllowed = true
    const track = new FakeTrack(`id of ${name}`, this.cameras[name] ?? {})
    this.tracks.push(track)
    return { getTracks: () => [track], getVideoTracks: () => [track] }
  }

  /** Pulled out: its track ends, and the browser says that the devices have changed. */
  unplug(name: string): void {
    this.cameras = Object.fromEntries(Object.entries(this.cameras).filter(([each]) => each !== name))
    for (const track of this.tracks) {
      if (track.deviceId !== `id of ${name}` || track.readyState === 'ended') continue
      track.readyState = 'ended'
      track.dispatchEvent(new Event('ended'))
    }
    this.dispatchEvent(new Event('devicechange'))
  }

  plugIn(name: string, abilities: FakeAbilities = {}): void {
    this.cameras = { ...this.cameras, [name]: abilities }
    this.dispatchEvent(new Event('devicechange'))
  }
}

/** Puts the machine's cameras into the window; undefined takes them out, as an unsafe address does. */
export const haveCameras = (machine: FakeMachine | undefined): void => {
  Object.defineProperty(navigator, 'mediaDevices', { value: machine, configurable: true })
  // What jsdom has none of: the thumbnail is drawn on nothing.
  vi.spyOn(HTMLCanvasElement.prototype, 'getContext').mockReturnValue(null)
}
