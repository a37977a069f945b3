import type { StillPhotograph } from './still-photograph'
import { writeJpeg } from './write-jpeg'

/** A picture the moment it is taken: small at once, whole as soon as it is written. */
export interface Grabbed {
  readonly thumbnail: ImageBitmap
  readonly jpeg: Promise<Blob>
}

/** Rejects when the live picture shows nothing yet. `still` is asked for the camera's own photograph, and need not give it. */
export type GrabPicture = (video: HTMLVideoElement, still: StillPhotograph | undefined) => Promise<Grabbed>

/** Wide enough for the strip on a fine screen, px. */
const thumbnailWidthPx = 256

/** The frame shown now. A `VideoFrame` is the camera's own memory, handed on without copying 12 MP. */
const frameOf = async (video: HTMLVideoElement): Promise<VideoFrame | ImageBitmap> => ('VideoFrame' in globalThis ? new VideoFrame(video) : createImageBitmap(video))

const drawSmall = (frame: VideoFrame | ImageBitmap, widthPx: number, heightPx: number): ImageBitmap => {
  const small = new OffscreenCanvas(thumbnailWidthPx, Math.max(1, Math.round((thumbnailWidthPx * heightPx) / widthPx)))
  small.getContext('2d', { alpha: false })?.drawImage(frame, 0, 0, small.width, small.height)
  return small.transferToImageBitmap()
}

/** The same frame small and whole, so that what is shown is what is kept; or the camera's own photograph of that moment. */
export const grabPicture: GrabPicture = async (video, still) => {
  const { videoWidth: widthPx, videoHeight: heightPx } = video
  const frame = await frameOf(video)
  const thumbnail = drawSmall(frame, widthPx, heightPx)
  const fromFrame = (): Promise<Blob> => writeJpeg(frame, { widthPx, heightPx })
  if (still === undefined) return { thumbnail, jpeg: fromFrame() }
  const photograph = still.take().then((jpeg) => {
    frame.close()
    return jpeg
  })
  return { thumbnail, jpeg: photograph.catch(fromFrame) }
}
