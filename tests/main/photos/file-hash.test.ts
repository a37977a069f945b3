import { createHash, hash } from 'node:crypto'
import { closeSync, ftruncateSync, openSync, rmSync, statSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { lookAtFile } from '../../../main/photos/file-hash'
import { emptyFolder } from './shelf-folder'

const put = async (bytes: Uint8Array | string): Promise<string> => {
  const path = join(await emptyFolder(), 'a file')
  writeFileSync(path, bytes)
  return path
}

describe('a file on the disk', () => {
  /** Source: NIST, Secure Hash Standard (FIPS 180-4) with its examples SHA256.pdf ('abc' and the 448-bit message) and SHA_All.pdf (a million times 'a'). */
  it.each([
    ['abc', 'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad'],
    ['abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq', '248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1'],
    ['a'.repeat(1_000_000), 'cdc76e5c9914fb9281a1c7e284d73e67f1809a48a497200e046d39ccc7112cd0'],
  ])('read in pieces comes to the published SHA-256 (%.8s…)', async (text, sha256) => {
    expect(await lookAtFile(await put(text), { sha256, byteCount: text.length })).toEqual({ is: 'as recorded' })
  })

  it('is told to be missing, of another size, or of the same size and other bytes', async () => {
    const path = await put('a strap, worn')
    const recorded = { sha256: hash('sha256', 'a strap, worn'), byteCount: 13 }
    expect(await lookAtFile(`${path} gone`, recorded)).toEqual({ is: 'missing' })
    expect(await lookAtFile(path, { ...recorded, byteCount: 14 })).toEqual({ is: 'resized', byteCount: 13 })
    writeFileSync(path, 'a strap, torn')
    expect(await lookAtFile(path, recorded)).toEqual({ is: 'changed', sha256: hash('sha256', 'a strap, torn') })
  })

  it('that is none, but a folder, cannot be read; the reason is told', async () => {
    const folder = await emptyFolder()
    expect(await lookAtFile(folder, { sha256: '', byteCount: statSync(folder).size })).toEqual({ is: 'unreadable', reason: 'EISDIR' })
  })

  it('of more than memory should hold is read in pieces: half a gigabyte takes less than 64 MB', async () => {
    const byteCount = 512 * 1024 * 1024
    const path = join(await emptyFolder(), 'long')
    const file = openSync(path, 'w')
    ftruncateSync(file, byteCount)
    closeSync(file)
    const whole = createHash('sha256')
    const zeros = Buffer.alloc(1024 * 1024)
    for (let piece = 0; piece < 512; piece += 1) whole.update(zeros)
    const before = process.memoryUsage.rss()
    let most = before
    let read = 0
    const onBytes = (count: number): void => {
      read += count
      most = Math.max(most, process.memoryUsage.rss())
    }
    expect(await lookAtFile(path, { sha256: whole.digest('hex'), byteCount }, { onBytes })).toEqual({ is: 'as recorded' })
    expect(read).toBe(byteCount)
    expect(most - before).toBeLessThan(64 * 1024 * 1024)
    rmSync(path)
  }, 60_000)

  it('is read no further once it is stopped', async () => {
    const path = await put(Buffer.alloc(8 * 1024 * 1024))
    const stop = new AbortController()
    let read = 0
    const looking = lookAtFile(path, { sha256: '', byteCount: 8 * 1024 * 1024 }, {
      signal: stop.signal,
      onBytes: (count) => {
        read += count
        stop.abort()
      },
    })
    await expect(looking).rejects.toMatchObject({ name: 'AbortError' })
    expect(read).toBeLessThan(8 * 1024 * 1024)
    await expect(lookAtFile(path, { sha256: '', byteCount: 1 }, { signal: stop.signal })).rejects.toMatchObject({ name: 'AbortError' })
  })
})
