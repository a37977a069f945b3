import { createHash } from 'node:crypto'
import { open, stat } from 'node:fs/promises'

export interface LookOptions {
  /** Ends the looking; what was asked for then rejects with its reason. */
  readonly signal?: AbortSignal | undefined
  /** Told of every piece read. */
  readonly onBytes?: ((byteCount: number) => void) | undefined
}

/** What became of a file that was recorded with its size and hash. */
export type FileFound =
  | { readonly is: 'as recorded' | 'missing' }
  | { readonly is: 'resized'; readonly byteCount: number }
  | { readonly is: 'changed'; readonly sha256: string }
  | { readonly is: 'unreadable'; readonly reason: string }

/** Small enough that hashing one never holds the window up, large enough to read at the disk's own speed. */
const pieceBytes = 256 * 1024

const codeOf = (error: unknown): string => (error instanceof Error && 'code' in error ? String(error.code) : '')

const hashOf = async (path: string, { signal, onBytes }: LookOptions): Promise<string> => {
  const hash = createHash('sha256')
  const piece = Buffer.alloc(pieceBytes)
  const file = await open(path)
  try {
    for (;;) {
      signal?.throwIfAborted()
      const { bytesRead } = await file.read(piece)
      if (bytesRead === 0) return hash.digest('hex')
      hash.update(piece.subarray(0, bytesRead))
      onBytes?.(bytesRead)
    }
  } finally {
    await file.close()
  }
}

/** Reads a file from end to end, a piece at a time, and holds it to its recorded hash, and to its size where that is recorded. */
export const lookAtFile = async (path: string, recorded: { readonly sha256: string; readonly byteCount?: number }, options: LookOptions = {}): Promise<FileFound> => {
  options.signal?.throwIfAborted()
  try {
    const { size } = await stat(path)
    if (recorded.byteCount !== undefined && size !== recorded.byteCount) return { is: 'resized', byteCount: size }
    const sha256 = await hashOf(path, options)
    return sha256 === recorded.sha256 ? { is: 'as recorded' } : { is: 'changed', sha256 }
  } catch (error) {
    options.signal?.throwIfAborted()
    const code = codeOf(error)
    return code === 'ENOENT' || code === 'ENOTDIR' ? { is: 'missing' } : { is: 'unreadable', reason: code || String(error) }
  }
}
