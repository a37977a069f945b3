import { hash } from 'node:crypto'
import type { Sha256 } from '../../shared-logic/proof/entry'

/** Lower-case hex of a text's UTF-8 bytes. */
export const sha256Of: Sha256 = (text) => hash('sha256', text)

/** Bytes of an entry as text, exactly; undefined where they are none. */
export const exactText = (bytes: Uint8Array | null): string | undefined => {
  try {
    return bytes === null ? undefined : new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes)
  } catch {
    return undefined
  }
}
