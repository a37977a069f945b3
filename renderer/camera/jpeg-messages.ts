/** One picture to write: a frame of the camera, moved over, and its size. */
export interface ToWriter {
  readonly number: number
  readonly frame: VideoFrame | ImageBitmap
  readonly widthPx: number
  readonly heightPx: number
}

/** The picture written; without `jpeg` it could not be. */
export interface FromWriter {
  readonly number: number
  readonly jpeg?: Blob
}
