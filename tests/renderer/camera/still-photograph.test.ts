import { afterEach, describe, expect, it, vi } from 'vitest'
import { grabPicture } from '../../../renderer/camera/grab-picture'
import { stillPhotographOf } from '../../../renderer/camera/still-photograph'

afterEach(() => {
  vi.unstubAllGlobals()
  vi.useRealTimers()
})

const live = { widthPx: 1920, heightPx: 1080 }
// oxlint-disable-next-line typescript/no-unsafe-type-assertion -- only handed on
const track = {} as MediaStreamTrack
const jpeg = new Blob(['large'], { type: 'image/jpeg' })

interface Camera {
  readonly widthPx: number
  readonly heightPx: number
  readonly gives?: () => Promise<Blob>
  /** Of what it gives, once decoded. */
  readonly decodes?: { readonly width: number; readonly height: number }
}

/** A browser with the W3C's image capture, over a camera like this. */
const browserWith = ({ widthPx, heightPx, gives = () => Promise.resolve(jpeg), decodes = { width: widthPx, height: heightPx } }: Camera) => {
  const wanted: unknown[] = []
  vi.stubGlobal('ImageCapture', class {
    getPhotoCapabilities = async () => ({ imageWidth: { max: widthPx }, imageHeight: { max: heightPx } })
    takePhoto = (settings: unknown) => {
      wanted.push(settings)
      return gives()
    }
  })
  vi.stubGlobal('createImageBitmap', async () => ({ ...decodes, close: () => undefined }))
  return wanted
}

describe('a camera’s own photograph', () => {
  it('is taken at its largest where it is larger than the live picture', async () => {
    const wanted = browserWith({ widthPx: 4608, heightPx: 3456 })
    const still = await stillPhotographOf(track, live)
    expect(still?.size).toEqual({ widthPx: 4608, heightPx: 3456 })
    expect(await still?.take()).toBe(jpeg)
    expect(wanted).toEqual([{ imageWidth: 4608, imageHeight: 3456 }])
  })

  it.each([[1920, 1080], [1280, 720], [0, 0]])('is not offered where it would be %i × %i', async (widthPx, heightPx) => {
    browserWith({ widthPx, heightPx })
    expect(await stillPhotographOf(track, live)).toBeUndefined()
  })

  it('is not offered where the browser has none of it', async () => {
    expect(await stillPhotographOf(track, live)).toBeUndefined()
  })

  it.each([
    ['fails', { gives: () => Promise.reject(new Error('the camera is busy')) }],
    ['is no JPEG', { gives: () => Promise.resolve(new Blob(['x'], { type: 'image/png' })) }],
    ['is smaller than it said', { decodes: { width: 1280, height: 720 } }],
  ])('is refused when it %s', async (_how, camera) => {
    browserWith({ widthPx: 4608, heightPx: 3456, ...camera })
    const still = await stillPhotographOf(track, live)
    await expect(still?.take()).rejects.toThrow(Error)
  })

  it('is not waited for without end', async () => {
    vi.useFakeTimers()
    browserWith({ widthPx: 4608, heightPx: 3456, gives: () => new Promise(() => undefined) })
    const still = await stillPhotographOf(track, live)
    const refusal = still?.take().catch((error: unknown) => String(error))
    await vi.advanceTimersByTimeAsync(7_000)
    expect(await refusal).toContain('no photograph came')
  })
})

describe('a picture that is taken', () => {
  /** The worker that writes is started once and stays. */
  const written: unknown[] = []
  /** What Node has none of: frames, canvases, and that worker. */
  const browserThatWrites = () => {
    const closed: string[] = []
    written.length = 0
    vi.stubGlobal('VideoFrame', class { close = () => void closed.push('frame') })
    vi.stubGlobal('OffscreenCanvas', class {
      constructor(readonly width: number, readonly height: number) {}
      getContext = () => ({ drawImage: () => undefined })
      transferToImageBitmap = () => ({ width: this.width, height: this.height })
    })
    vi.stubGlobal('Worker', class extends EventTarget {
      postMessage = (message: { readonly number: number; readonly widthPx: number; readonly heightPx: number }): void => {
        written.push([message.widthPx, message.heightPx])
        queueMicrotask(() => this.dispatchEvent(new MessageEvent('message', { data: { number: message.number, jpeg: new Blob(['frame'], { type: 'image/jpeg' }) } })))
      }
    })
    return closed
  }
  // oxlint-disable-next-line typescript/no-unsafe-type-assertion -- of the element only its size is read
  const video = { videoWidth: 1920, videoHeight: 1080 } as HTMLVideoElement

  it('is the frame shown, at its full size, with a small one of the same shape at once', async () => {
    browserThatWrites()
    const { thumbnail, jpeg: whole } = await grabPicture(video, undefined)
    expect([thumbnail.width, thumbnail.height]).toEqual([256, 144])
    expect(await (await whole).text()).toBe('frame')
    expect(written).toEqual([[1920, 1080]])
  })

  it('is the camera’s own photograph where that comes, and the frame is given back', async () => {
    const closed = browserThatWrites()
    const { jpeg: whole } = await grabPicture(video, { size: { widthPx: 4608, heightPx: 3456 }, take: () => Promise.resolve(jpeg) })
    expect(await whole).toBe(jpeg)
    expect(written).toEqual([])
    expect(closed).toEqual(['frame'])
  })

  it('is the frame where the camera’s own photograph does not come', async () => {
    browserThatWrites()
    const { jpeg: whole } = await grabPicture(video, { size: { widthPx: 4608, heightPx: 3456 }, take: () => Promise.reject(new Error('no photograph came')) })
    expect(await (await whole).text()).toBe('frame')
    expect(written).toEqual([[1920, 1080]])
  })
})
