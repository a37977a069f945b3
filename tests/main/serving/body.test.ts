import { IncomingMessage } from 'node:http'
import { Socket } from 'node:net'
import { expect, it } from 'vitest'
import { BodyReader, fileLimitBytes } from '../../../main/serving/body'

/** A request whose body is promised as the largest there may be and has come, but for what it weighs here. */
const largest = (): IncomingMessage => {
  const request = new IncomingMessage(new Socket())
  request.headers['content-length'] = String(fileLimitBytes)
  request.push(new Uint8Array(16))
  request.push(null)
  return request
}

it('memory stays set aside until what is done with a body is done, however it ends', async () => {
  const reader = new BodyReader()
  const first = Promise.withResolvers<void>()
  const second = Promise.withResolvers<void>()
  const works = [first, second].map(({ promise }) => reader.readFor(largest(), fileLimitBytes, () => promise))
  await new Promise((resolve) => setTimeout(resolve, 50))
  expect(await reader.read(largest(), fileLimitBytes)).toEqual({ ok: false, why: 'busy' })
  first.resolve()
  await works[0]
  expect(await reader.read(largest(), fileLimitBytes)).toEqual({ ok: false, why: 'broken off' })
  second.reject(new Error('the disk is full'))
  await expect(works[1]).rejects.toThrow('the disk is full')
  const both = [reader.read(largest(), fileLimitBytes), reader.read(largest(), fileLimitBytes)]
  expect(await Promise.all(both)).toEqual([{ ok: false, why: 'broken off' }, { ok: false, why: 'broken off' }])
})
