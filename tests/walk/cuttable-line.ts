import { createServer, request as ask, type IncomingMessage, type ServerResponse } from 'node:http'
import type { AddressInfo } from 'node:net'
import { Transform } from 'node:stream'

/**
 * What the line does with an upload. 'carry' lets it through; 'no signal' cuts everything, uploads or not; 'no uploads'
 * cuts uploads alone, as a network too weak for more than a page; 'cut midway' cuts after so many bytes of the picture;
 * 'cut before the reply' lets the picture arrive whole and cuts before the phone hears of it.
 */
export type Weather = 'carry' | 'no signal' | 'no uploads' | { readonly cutMidwayAfter: number } | 'cut before the reply'

export interface CuttableLine {
  /** For a browser's `proxy`. */
  readonly address: string
  /** Holds until it is set anew; a cut midway or before the reply happens once, and then all is carried. */
  weather: Weather
  /** How many uploads were begun, cut, and carried whole. */
  readonly uploads: { begun: number; cut: number; whole: number }
  readonly close: () => Promise<void>
}

/** Passes so many bytes on and then breaks. */
const breakingAfter = (limit: number, onBreak: () => void): Transform => {
  let passed = 0
  return new Transform({
    transform(chunk: Buffer, _encoding, done) {
      passed += chunk.byteLength
      if (passed > limit) onBreak()
      else done(null, chunk)
    },
  })
}

/** The network between phone and desktop, as a proxy of the phone's browser that a test can cut where it likes. */
export const openLine = async (): Promise<CuttableLine> => {
  const uploads = { begun: 0, cut: 0, whole: 0 }
  const line = { weather: 'carry' as Weather, uploads }
  const carry = (request: IncomingMessage, response: ServerResponse, weather: Weather): void => {
    const { hostname, port, pathname } = new URL(request.url ?? '')
    const onward = ask({ hostname, port, path: pathname, method: request.method, headers: request.headers })
    const isUpload = pathname === '/photographs'
    const cut = (): void => {
      if (isUpload) uploads.cut += 1
      onward.destroy()
      request.socket.destroy()
    }
    onward.on('error', () => response.destroy())
    onward.on('response', (reply) => {
      if (isUpload && weather === 'cut before the reply') return cut()
      if (isUpload) uploads.whole += 1
      // One request a line: on one that was used before, a browser sends again by itself what broke off, and the page's own care would not be seen.
      response.writeHead(reply.statusCode ?? 502, { ...reply.headers, connection: 'close' })
      reply.pipe(response)
    })
    if (isUpload && typeof weather === 'object') request.pipe(breakingAfter(weather.cutMidwayAfter, cut)).pipe(onward)
    else request.pipe(onward)
  }
  const server = createServer((request, response) => {
    const isUpload = request.url?.endsWith('/photographs') === true
    if (isUpload) uploads.begun += 1
    const { weather } = line
    if (weather === 'no signal' || (weather === 'no uploads' && isUpload)) {
      if (isUpload) uploads.cut += 1
      request.socket.destroy()
      return
    }
    if (isUpload) line.weather = 'carry'
    carry(request, response, weather)
  })
  await new Promise<void>((resolve) => { server.listen(0, '127.0.0.1', resolve) })
  const { port } = server.address() as AddressInfo
  return Object.assign(line, {
    address: `http://127.0.0.1:${port}`,
    close: () => new Promise<void>((resolve) => {
      server.close(() => resolve())
      server.closeAllConnections()
    }),
  })
}
