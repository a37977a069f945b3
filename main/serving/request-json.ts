import type { IncomingMessage } from 'node:http'
import { inputHeader } from '../../shared-logic/contract/input-header'

export type ReadJson = { readonly ok: true; readonly value: unknown } | { readonly ok: false }

const parsed = (read: () => string): ReadJson => {
  try {
    return { ok: true, value: JSON.parse(read()) }
  } catch {
    return { ok: false }
  }
}

const strictText = new TextDecoder('utf-8', { fatal: true })

export const jsonInBody = (bytes: Uint8Array): ReadJson => parsed(() => strictText.decode(bytes))

/** What stands beside a file that is the body. */
export const jsonInHeader = (request: IncomingMessage): ReadJson => {
  const header = request.headers[inputHeader]
  return parsed(() => decodeURIComponent(typeof header === 'string' ? header : ''))
}

/** A body is a form as JSON, or one file's bytes; anything else a page could send across without asking. */
export const hasType = (request: IncomingMessage, type: 'application/json' | 'application/octet-stream'): boolean =>
  (request.headers['content-type'] ?? '').split(';')[0]?.trim() === type
