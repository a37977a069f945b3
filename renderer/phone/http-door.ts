import { inputHeader } from '../../shared-logic/contract/input-header'
import { NoAnswer, TurnedAway, type Door, type Told } from './door'
import { readArrived, readChecks, readPair, readPhotograph, readRefusal } from './read-replies'

type Reader<Reply> = (value: unknown) => Reply | undefined

/** A question is a few bytes: on a network that still carries, its answer is there by then. */
const answerWithinMs = 15_000
/** An upload may take long, but not stand still; the desktop may take long to read a large picture. */
const stillForMs = 30_000
const readWithinMs = 120_000

const parsed = (text: string): unknown => {
  try {
    return JSON.parse(text)
  } catch {
    return undefined
  }
}

/** What came back: the reply, or why there is none. A gateway's own error (5xx without our words) is no answer of ours. */
const replyFrom = <Reply>(status: number, text: string, read: Reader<Reply>): Reply => {
  const value = parsed(text)
  if (status >= 200 && status < 300) {
    const reply = read(value)
    if (reply === undefined) throw new NoAnswer('another page answered')
    return reply
  }
  const refusal = readRefusal(value)
  if (refusal === undefined && (status >= 500 || status < 400)) throw new NoAnswer(`status ${status}`)
  throw new TurnedAway(status, refusal?.code ?? '', refusal?.sentence)
}

const clockAhead = (header: string | null): number => {
  const theirs = header === null ? Number.NaN : Date.parse(header)
  return Number.isNaN(theirs) ? 0 : theirs - Date.now()
}

const ask = async <Reply extends object>(path: string, request: RequestInit, read: Reader<Reply>): Promise<Told<Reply>> => {
  const stop = new AbortController()
  const timer = setTimeout(() => stop.abort(), answerWithinMs)
  try {
    const response = await fetch(path, { ...request, cache: 'no-store', redirect: 'error', signal: stop.signal }).catch(() => undefined)
    const text = await response?.text().catch(() => undefined)
    if (response === undefined || text === undefined) throw new NoAnswer(path)
    return { ...replyFrom(response.status, text, read), clockAheadMs: clockAhead(response.headers.get('date')) }
  } finally {
    clearTimeout(timer)
  }
}

/** Sends one picture. `XMLHttpRequest`, because `fetch` does not tell how far an upload has come. */
const send: Door['send'] = (about, file, onProgress) =>
  new Promise((resolve, reject) => {
    const request = new XMLHttpRequest()
    let timer = setTimeout(() => request.abort(), stillForMs)
    const allow = (ms: number): void => {
      clearTimeout(timer)
      timer = setTimeout(() => request.abort(), ms)
    }
    request.upload.addEventListener('progress', ({ loaded, total }) => {
      allow(stillForMs)
      if (total > 0) onProgress(loaded / total)
    })
    request.upload.addEventListener('load', () => allow(readWithinMs))
    request.addEventListener('loadend', () => {
      clearTimeout(timer)
      try {
        // Status 0: cut, refused by the network, or stopped by the timer.
        if (request.status === 0) throw new NoAnswer('photographs')
        resolve(replyFrom(request.status, request.responseText, readPhotograph))
      } catch (error) {
        reject(error instanceof Error ? error : new NoAnswer('photographs'))
      }
    })
    request.open('POST', 'photographs')
    request.setRequestHeader('content-type', 'application/octet-stream')
    request.setRequestHeader(inputHeader, encodeURIComponent(JSON.stringify(about)))
    request.send(file)
  })

/** The door over HTTP, at the address this page came from. */
export const httpDoor: Door = {
  pair: (secret, phoneName) => ask('pair', { method: 'POST', headers: { 'content-type': 'application/json' }, body: JSON.stringify({ secret, phoneName }) }, readPair),
  checks: () => ask('checks', {}, readChecks),
  arrived: () => ask('arrived', {}, readArrived),
  send,
}
