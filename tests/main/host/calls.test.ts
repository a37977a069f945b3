import { createHash } from 'node:crypto'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { replySchema, inputHeader } from '../../../shared-logic/contract/reply'
import { procedureNames } from '../../../shared-logic/contract/contract'
import { en } from '../../../shared-logic/words/en'
import { sayRefusal } from '../../../shared-logic/words/say-refusal'
import { fileHeaders } from '../../../main/serving/served'
import { photograph, plainRig, runHost, type RunningHost } from './running-host'

let at: RunningHost
let surveyId: string
beforeAll(async () => {
  at = await runHost()
  const { id: rigId } = await at.opened.desk['rigs.save']({ rig: plainRig('Tern') })
  surveyId = (await at.opened.desk['surveys.start']({ rigId, purpose: 'yearly', surveyDate: '2026-01-02', ruleBook: 'us' })).id
})
afterAll(() => at.stop())

const refusalOf = async (answer: Response) => {
  const reply = replySchema.parse(await answer.json())
  if (reply.ok) throw new Error('it was not refused')
  return reply.refusal
}
const sentenceOf = async (answer: Response): Promise<string> => sayRefusal(en, await refusalOf(answer))

const addPhotograph = (bytes: Uint8Array, fileName = 'hub.jpg', headers: Record<string, string> = {}): Promise<Response> =>
  fetch(`${at.origin}/api/photographs.add`, {
    method: 'POST',
    body: new Uint8Array(bytes),
    headers: { cookie: at.cookie, origin: at.origin, 'content-type': 'application/octet-stream', [inputHeader]: encodeURIComponent(JSON.stringify({ surveyId, fileName })), ...headers },
  })

describe('a call', () => {
  it.each(procedureNames)('%s is answered with a reply, never with a fault', async (name) => {
    const answer = await at.call(name, { nonsense: true }, name === 'photographs.add' ? { 'content-type': 'application/octet-stream', [inputHeader]: '%7B%7D' } : {})
    expect(replySchema.safeParse(await answer.json()).success).toBe(true)
    expect([200, 422]).toContain(answer.status)
  })

  it('of a name that is none is refused by that name', async () => {
    expect(await refusalOf(await at.call('rigs.steal', {}))).toEqual({ code: 'door.no-procedure', values: { procedure: 'rigs.steal' } })
    for (const name of ['__proto__', 'constructor', 'toString', 'rigs.list%2F..%2Frigs.get']) expect((await at.call(name, {})).status).toBe(404)
  })

  it.each(['', '{', 'undefined', '\u0000', '{"a":1}}'])('whose body is %j cannot be read, and says so', async (body) => {
    const answer = await fetch(`${at.origin}/api/rigs.list`, { method: 'POST', body, headers: { cookie: at.cookie, origin: at.origin, 'content-type': 'application/json' } })
    expect(answer.status).toBe(400)
    expect((await refusalOf(answer)).code).toBe('door.not-json')
  })

  it('in broken UTF-8 is not taken with replaced letters', async () => {
    const answer = await fetch(`${at.origin}/api/rigs.list`, { method: 'POST', body: new Uint8Array([0x22, 0xff, 0x22]), headers: { cookie: at.cookie, origin: at.origin, 'content-type': 'application/json' } })
    expect((await refusalOf(answer)).code).toBe('door.not-json')
  })

  it.each(['text/plain', 'application/x-www-form-urlencoded', 'multipart/form-data; boundary=x'])('as %s, which a form of another page can send, is refused', async (type) => {
    expect((await at.call('rigs.list', {}, { 'content-type': type })).status).toBe(415)
  })

  it('with a note of 4 MB is read, and refused with how long a note may be; nothing is kept', async () => {
    const answer = await at.call('surveys.answer', { surveyId, checkId: 'hubs.play', position: 'axle 1 left', answer: { note: 'n'.repeat(4_000_000) } })
    expect(answer.status).toBe(422)
    expect(await sentenceOf(answer)).toMatch(/20,?000/)
    expect((await at.opened.desk['surveys.get']({ surveyId })).answers).toEqual([])
  })

  it('of more than 8 MB is refused before it is read, with the limit in the sentence', async () => {
    const answer = await at.raw([
      'POST /api/rigs.save HTTP/1.1', `Host: 127.0.0.1:${at.port}`, `Cookie: ${at.cookie}`, `Origin: ${at.origin}`, 'Content-Type: application/json', 'Content-Length: 8000001', '', '{"rig":',
    ].join('\r\n'), 1_500)
    expect(answer).toMatch(/^HTTP\/1\.1 413/)
    expect(answer).toContain('"limit":8')
    expect(answer).toContain('Connection: close')
  })

  it('in chunks of no stated length is refused', async () => {
    const answer = await at.raw([
      'POST /api/rigs.list HTTP/1.1', `Host: 127.0.0.1:${at.port}`, `Cookie: ${at.cookie}`, `Origin: ${at.origin}`, 'Content-Type: application/json', 'Transfer-Encoding: chunked', 'Connection: close', '', '2\r\n{}\r\n0\r\n\r\n',
    ].join('\r\n'))
    expect(answer).toMatch(/^HTTP\/1\.1 411/)
  })

  it('that breaks off half-way keeps nothing and leaves the host well', async () => {
    await at.raw([
      'POST /api/rigs.save HTTP/1.1', `Host: 127.0.0.1:${at.port}`, `Cookie: ${at.cookie}`, `Origin: ${at.origin}`, 'Content-Type: application/json', 'Content-Length: 100', '', '{"rig":{"name":"Half"',
    ].join('\r\n'), 200)
    const { rigs } = await at.opened.desk['rigs.list']({ offset: 0, limit: 50 })
    expect(rigs.map(({ rig }) => rig.name)).toEqual(['Tern'])
    expect((await at.call('rigs.list', {})).status).toBe(200)
    expect(at.faults).toEqual([])
  })

  it('two promises of the largest file leave no room for a third, which is told to come again', async () => {
    const promise = [
      'POST /api/photographs.add HTTP/1.1', `Host: 127.0.0.1:${at.port}`, `Cookie: ${at.cookie}`, `Origin: ${at.origin}`, 'Content-Type: application/octet-stream', `${inputHeader}: {}`, 'Content-Length: 110000000', '', 'x',
    ].join('\r\n')
    const holding = [at.raw(promise, 800), at.raw(promise, 800)]
    await new Promise((resolve) => setTimeout(resolve, 200))
    const answer = await addPhotograph(await photograph(1))
    expect(answer.status).toBe(503)
    expect(await sentenceOf(answer)).toContain('again in a moment')
    await Promise.all(holding)
    expect((await addPhotograph(await photograph(1))).status).toBe(200)
  })

  it('that fails inside says nothing of the inside', async () => {
    const answer = await at.call('surveys.get', { surveyId: '0198c0de-0000-7000-8000-000000000000' })
    const text = await answer.text()
    expect(text).not.toContain(at.folder)
    expect(text).not.toMatch(/at .*\.ts|node_modules|SQLITE/)
  })
})

describe('a photograph', () => {
  it('is taken as bytes and served again to the byte under its hash, and never under another', async () => {
    const bytes = await photograph(7)
    expect((await addPhotograph(bytes, 'Nabe löst “sich”.jpg')).status).toBe(200)
    const sha256 = createHash('sha256').update(bytes).digest('hex')
    const served = await at.get(`photographs/${sha256}/original`)
    expect(served.headers.get('content-type')).toBe('image/jpeg')
    expect(Buffer.from(await served.arrayBuffer()).equals(bytes)).toBe(true)
    expect(served.headers.get('content-disposition')).toBe('inline; filename="Nabe l_st _sich_.jpg"')
    expect((await at.get(`photographs/${sha256}/small`)).status).toBe(200)
    expect((await at.get(`photographs/${sha256.replace(/^./, (first) => (first === 'a' ? 'b' : 'a'))}/original`)).status).toBe(404)
    expect((await at.get(`photographs/${sha256.toUpperCase()}/original`)).status).toBe(sha256 === sha256.toUpperCase() ? 200 : 404)
  })

  it('that is a text file named .jpg is refused by its name', async () => {
    const answer = await addPhotograph(Buffer.from('not a picture'), 'hub.jpg')
    expect(answer.status).toBe(422)
    expect(await sentenceOf(answer)).toContain('“hub.jpg”')
  })

  it('whose input is missing or is no JSON is refused', async () => {
    expect((await addPhotograph(await photograph(2), 'hub.jpg', { [inputHeader]: '%zz' })).status).toBe(400)
    expect((await addPhotograph(await photograph(2), 'hub.jpg', { [inputHeader]: '' })).status).toBe(400)
  })
})

describe('a file’s name', () => {
  it('brings no second header and no path with it', () => {
    const headers = fileHeaders({ bytes: new Uint8Array(), type: 'application/pdf', cache: 'never', fileName: 'a"\r\nSet-Cookie: x=1; ../../b.pdf' })
    expect(headers['Content-Disposition']).toBe('inline; filename="a___Set-Cookie_ x_1_ .._.._b.pdf"')
  })
})
