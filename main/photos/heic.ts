import { createRequire } from 'node:module'
import { Worker } from 'node:worker_threads'
import { longestProfileBytes, profileOfNumbers } from './colour-profile'
import workerText from './heic-worker.cjs?raw'
import { openLanes } from './lanes'
import { tiffHeadBytes, tiffTailBytes, wrapInTiff, type RoomyPixels } from './raw-tiff'

/** Why a HEIC was not decoded: it breaks off or is damaged, or takes more memory or time than it may. */
export class HeicFailure extends Error {
  readonly why: 'damaged' | 'takes too much'
  constructor(why: HeicFailure['why'], message: string) {
    super(message)
    this.why = why
  }
}

/** What the worker answers; see heic-worker.cjs. */
type Answer = (RoomyPixels & { readonly primaries?: number; readonly transfer?: number }) | { readonly failed: number; readonly message: string }

/** heif_error_Memory_allocation_error. Source: libheif 1.23, heif_error.h. The library itself cannot take more than 2 GiB. */
const outOfMemory = 6

/** A photograph of 12 MP takes under 2 s here, one of 200 MP under 10 s. */
const timeLimitMs = 120_000

/** One at a time, whatever the shelf's lanes: each takes about 10 bytes a pixel. */
const lane = openLanes(1)

/** The C interface of libheif: JavaScript wrappers of it give the first picture of a file, not the primary one, and in 8 bits. */
// Not named 'require': the bundler puts a 'require' of its own into the chunk, and two of one name do not load.
const fromHere = createRequire(import.meta.url)
const libraryPath = (): string => fromHere.resolve('libheif-js/wasm-bundle')

type Decoded = Exclude<Answer, { failed: number }>

/**
 * Decodes in a thread of its own, which ends with the picture: its memory never shrinks otherwise. Answers once the
 * thread is gone, so that the next one finds that memory free.
 */
const decodeApart = (bytes: Uint8Array, behind: number, limitMs: number): Promise<Decoded> =>
  new Promise((resolve, reject) => {
    const worker = new Worker(workerText, { eval: true, workerData: { library: libraryPath(), bytes, before: tiffHeadBytes, behind }, stdout: true, stderr: true })
    let outcome: Decoded | HeicFailure = new HeicFailure('damaged', 'the decoder ended without an answer')
    const end = (what: Decoded | HeicFailure): void => {
      outcome = what
      void worker.terminate()
    }
    const timer = setTimeout(() => end(new HeicFailure('takes too much', `not decoded in ${limitMs} ms`)), limitMs)
    worker.on('message', (answer: Answer) => end('failed' in answer ? new HeicFailure(answer.failed === outOfMemory ? 'takes too much' : 'damaged', answer.message) : answer))
    worker.on('error', (error) => end(new HeicFailure(error.name === 'RangeError' ? 'takes too much' : 'damaged', error.message)))
    worker.on('exit', () => {
      clearTimeout(timer)
      if (outcome instanceof HeicFailure) reject(outcome)
      else resolve(outcome)
    })
  })

/**
 * The primary picture of a HEIC, upright by the container's own turning, as an uncompressed TIFF with its colour
 * profile. `profile` is the one the file holds; without it the numbers it may hold in its stead are honoured.
 * Throws `HeicFailure`.
 */
export const heicAsTiff = (bytes: Uint8Array, profile: Uint8Array | undefined, limitMs = timeLimitMs): Promise<Buffer> =>
  lane.run(async () => {
    const pixels = await decodeApart(bytes, tiffTailBytes(profile?.byteLength ?? longestProfileBytes), limitMs)
    return wrapInTiff(pixels, profile ?? profileOfNumbers(pixels.primaries, pixels.transfer))
  })
