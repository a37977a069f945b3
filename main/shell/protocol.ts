import { protocol } from 'electron'
import { Refusal } from '../../shared-logic/contract/refusal'
import { en } from '../../shared-logic/words/en'
import { sayRefusal } from '../../shared-logic/words/say-refusal'
import type { OpenedDesk } from '../desk/open'
import { windowHeaders } from '../serving/headers'
import { fileHeaders, type Served } from '../serving/served'
import { serveFile } from '../serving/serve-file'
import { pathOf, scheme } from './address'

/** Before the program is ready: Chromium learns its schemes once. */
export const declareScheme = (): void =>
  protocol.registerSchemesAsPrivileged([{ scheme, privileges: { standard: true, secure: true, supportFetchAPI: true, codeCache: true } }])

const nothing = (status: number, sentence = ''): Response => new Response(sentence, { status, headers: { ...windowHeaders, 'Content-Type': 'text/plain; charset=utf-8' } })

const headersOf = (served: Served): Record<string, string> => ({ ...windowHeaders, ...fileHeaders(served) })

/** Serves the built window, recorded photographs and issued reports, and nothing else. */
export const serveWindow = (opened: OpenedDesk, rendererFolder: string): void =>
  protocol.handle(scheme, async (request) => {
    if (request.method !== 'GET' && request.method !== 'HEAD') return nothing(405)
    const path = pathOf(request.url)
    if (path === undefined) return nothing(404)
    try {
      const served = await serveFile(opened, rendererFolder, path)
      if (!served) return nothing(404)
      return new Response(request.method === 'HEAD' ? null : new Uint8Array(served.bytes), { status: 200, headers: headersOf(served) })
    } catch (fault) {
      return fault instanceof Refusal ? nothing(422, sayRefusal(en, fault.data)) : nothing(500)
    }
  })
