import { pixelsOf, type Resolution } from './resolutions'

/** A camera's own photograph, where it is larger than its live picture. */
export interface StillPhotograph {
  readonly size: Resolution
  /** Rejects when the camera gives none after all, or none larger than the live picture. */
  readonly take: () => Promise<Blob>
}

/** Some cameras switch over for a photograph; one that takes longer will not come. */
const patienceMs = 6_000

const within = <Value>(work: Promise<Value>): Promise<Value> =>
  Promise.race([work, new Promise<never>((_done, fail) => { setTimeout(() => fail(new Error('no photograph came')), patienceMs) })])

/** Only a whole JPEG with more pixels than the live picture is worth more than that. */
const needLarger = async (photograph: Blob, live: Resolution): Promise<Blob> => {
  if (photograph.type !== 'image/jpeg') throw new Error('no JPEG')
  const decoded = await createImageBitmap(photograph)
  const size = { widthPx: decoded.width, heightPx: decoded.height }
  decoded.close()
  if (pixelsOf(size) <= pixelsOf(live)) throw new Error('no larger than the live picture')
  return photograph
}

/** Undefined where the camera offers no photograph larger than the live picture at its largest. */
export const stillPhotographOf = async (track: MediaStreamTrack, live: Resolution): Promise<StillPhotograph | undefined> => {
  if (!('ImageCapture' in globalThis)) return undefined
  try {
    const capture = new ImageCapture(track)
    const { imageWidth, imageHeight } = await within(capture.getPhotoCapabilities())
    const size = { widthPx: imageWidth?.max ?? 0, heightPx: imageHeight?.max ?? 0 }
    if (pixelsOf(size) <= pixelsOf(live)) return undefined
    return { size, take: async () => needLarger(await within(capture.takePhoto({ imageWidth: size.widthPx, imageHeight: size.heightPx })), live) }
  } catch {
    return undefined
  }
}
