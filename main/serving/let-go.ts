import type { IncomingMessage } from 'node:http'

/** Longer than 100 MB last on a good network; nothing of it is held. */
const readAwayMs = 20_000

/**
 * What is still being sent to an answer that is given already is read away for a while, and the line is held open: cut at
 * once, the sender would hear of a broken line in place of the answer.
 */
export const letGo = (request: IncomingMessage): void => {
  if (request.complete) return
  request.resume()
  const tooLong = setTimeout(() => request.destroy(), readAwayMs).unref()
  request.once('close', () => clearTimeout(tooLong))
}
