import type { IncomingMessage } from 'node:http'
import type { RefusalData } from '../../shared-logic/contract/refusal'

/** JSON is a form; 8 MB leave room to read a note that is far too long and to say so. */
export const jsonLimitBytes = 8_000_000
/** One photograph: the intake takes 100 MB and says so; a little more is read so that it can. */
export const fileLimitBytes = 110_000_000
/** All bodies being read or worked on at once: two of the largest. */
const inFlightLimitBytes = 2 * fileLimitBytes

export type Body = { readonly ok: true; readonly bytes: Uint8Array } | { readonly ok: false; readonly why: 'no length' | 'too large' | 'busy' | 'broken off' }

const statuses: Readonly<Record<Extract<Body, { ok: false }>['why'], readonly [status: number, code: string]>> = {
  'no length': [411, 'door.no-length'],
  'too large': [413, 'door.too-large'],
  busy: [503, 'door.busy'],
  'broken off': [400, 'door.broken-off'],
}

/** How a body that was not taken is refused, with its HTTP status. */
export const bodyRefusal = (why: keyof typeof statuses, limitBytes: number): { readonly status: number; readonly refusal: RefusalData } => {
  const [status, code] = statuses[why]
  return { status, refusal: { code, ...(why === 'too large' && { values: { limit: limitBytes / 1_000_000 } }) } }
}

/** A sender this slow is not a network, it is somebody holding the line: bytes a second, once a while has gone by. */
const leastBytesPerSecond = 2_000
const graceMs = 15_000

/** Reads bodies of a declared length, never more than declared, and never more in all than memory is set aside for. */
export class BodyReader {
  #inFlight = 0

  read(request: IncomingMessage, limitBytes: number): Promise<Body> {
    return this.readFor(request, limitBytes, (body) => Promise.resolve(body))
  }

  /** The memory stays set aside until what is done with the body is done. */
  async readFor<Result>(request: IncomingMessage, limitBytes: number, work: (body: Body) => Promise<Result>): Promise<Result> {
    const declared = request.headers['content-length']
    if (declared === undefined || !/^\d{1,12}$/.test(declared)) return work({ ok: false, why: 'no length' })
    const length = Number(declared)
    if (length > limitBytes) return work({ ok: false, why: 'too large' })
    if (this.#inFlight + length > inFlightLimitBytes) return work({ ok: false, why: 'busy' })
    this.#inFlight += length
    try {
      return await work(await collect(request, length))
    } finally {
      this.#inFlight -= length
    }
  }
}

/** Memory grows with what has come, not with what was promised. */
const collect = async (request: IncomingMessage, length: number): Promise<Body> => {
  const chunks: Uint8Array[] = []
  let count = 0
  const begun = Date.now()
  const watch = setInterval(() => {
    const goneMs = Date.now() - begun
    if (goneMs > graceMs && count < (goneMs / 1_000) * leastBytesPerSecond) request.destroy()
  }, 5_000)
  try {
    for await (const chunk of request as AsyncIterable<Uint8Array>) {
      count += chunk.byteLength
      if (count > length) return { ok: false, why: 'too large' }
      chunks.push(chunk)
    }
  } catch {
    return { ok: false, why: 'broken off' }
  } finally {
    clearInterval(watch)
  }
  return count === length ? { ok: true, bytes: Buffer.concat(chunks, count) } : { ok: false, why: 'broken off' }
}
