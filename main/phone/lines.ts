import type { Server } from 'node:http'
import type { Socket } from 'node:net'

const mostLines = 64
/** A phone's browser holds six; another machine that holds many does not keep the phone out. */
const mostLinesOfOne = 12

/** Bounds a server on a network that others share: headers within 10 s, a body within 10 minutes, and few lines, of one address fewer still. */
export const boundLines = (server: Server): void => {
  server.headersTimeout = 10_000
  server.requestTimeout = 600_000
  server.keepAliveTimeout = 5_000
  server.maxConnections = mostLines
  server.maxHeadersCount = 60
  server.setTimeout(60_000)
  const held = new Map<string, number>()
  server.on('connection', (socket: Socket) => {
    const from = socket.remoteAddress ?? ''
    const count = (held.get(from) ?? 0) + 1
    if (count > mostLinesOfOne) {
      socket.destroy()
      return
    }
    held.set(from, count)
    socket.once('close', () => {
      const left = (held.get(from) ?? 1) - 1
      if (left === 0) held.delete(from)
      else held.set(from, left)
    })
  })
}

export const listening = (server: Server, host: string): Promise<number> =>
  new Promise((resolve, reject) => {
    server.once('error', reject)
    server.listen({ host, port: 0, exclusive: true }, () => {
      const address = server.address()
      if (address === null || typeof address === 'string') reject(new Error('no port'))
      else resolve(address.port)
    })
  })

/** Lets what is being taken be taken for a moment, then cuts every line. */
export const closing = (server: Server): Promise<void> =>
  new Promise((resolve) => {
    server.close(() => resolve())
    server.closeIdleConnections()
    setTimeout(() => server.closeAllConnections(), 2_000).unref()
  })
