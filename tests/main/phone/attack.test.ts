import { connect, type Socket } from 'node:net'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { photograph } from '../host/running-host'
import { pictureId, runDoor, type Door, type RunningDoor } from './running-door'

let at: RunningDoor
let door: Door
let cookie: string
beforeAll(async () => {
  at = await runDoor()
  door = await at.openDoor()
  cookie = await door.enter()
})
afterAll(() => at.stop())

const statusOf = (answer: string): number => Number(/^HTTP\/1\.1 (\d{3})/.exec(answer)?.[1] ?? 0)
const head = (line: string, ...headers: string[]): string => `${[line, ...headers].join('\r\n')}\r\n\r\n`

describe('other paths', () => {
  it.each([
    'index.html', 'assets/index-AbCd1234.js', 'api/surveys.get', 'api/yard.about', 'photographs/', 'photographs', 'reports/x.pdf', 'checks/', 'checks?x=1', 'pair', 'secret.json', 'phone.html/', 'PHONE.HTML', 'assets', '?token=x',
    `photographs/${'a'.repeat(64)}/original`,
  ])('“%s” gives a paired phone nothing', async (path) => {
    const answer = await door.ask(path, { headers: { cookie } })
    expect([404, 405]).toContain(answer.status)
    expect(await answer.text()).toMatch(/^\{"refusal"/)
  })

  it.each(['/../secret.json', '/..%2fsecret.json', '/%2e%2e/secret.json', '/assets/../../secret.json', '/assets/..%5c..%5csecret.json', '//secret.json', '/assets/%2e%2e%2f%2e%2e%2fsecret.json', '/.\\..\\secret.json', '/assets/\u0000phone-AbCd1234.js', 'secret.json', '/%c0%ae%c0%ae/secret.json'])(
    'no way up: “%s”', async (path) => {
      const answer = await door.raw(head(`GET ${path} HTTP/1.1`, `Host: 127.0.0.1:${door.port}`, `Cookie: ${cookie}`, 'Connection: close'))
      expect([400, 404]).toContain(statusOf(answer))
      expect(answer).not.toContain('"secret":true')
    })

  it('the phone’s page and its own files are all that is served, with headers that shut everything else', async () => {
    for (const path of ['', 'phone.html', 'assets/phone-AbCd1234.js', 'assets/shared-AbCd1234.js']) {
      const answer = await door.ask(path)
      expect([path, answer.status]).toEqual([path, 200])
      expect(answer.headers.get('content-security-policy')).toContain("default-src 'none'")
      expect(answer.headers.get('permissions-policy')).toContain('camera=()')
      await answer.arrayBuffer()
    }
  })

  it.each(['PUT', 'DELETE', 'PATCH', 'OPTIONS', 'TRACE'])('%s is not asked here', async (method) => {
    const answer = await door.raw(head(`${method} /checks HTTP/1.1`, `Host: 127.0.0.1:${door.port}`, `Cookie: ${cookie}`, 'Connection: close'))
    expect(statusOf(answer)).toBe(405)
  })
})

describe('who asks', () => {
  it.each(['checks', 'arrived'])('%s: without a cookie, with another’s, or with a guess, nothing', async (path) => {
    for (const wrong of ['', 'x=y', `bunkwright-phone-${door.port}=`, `bunkwright-phone-${door.port}=${'a'.repeat(43)}`, cookie.slice(0, -1), `${cookie}x`])
      expect([wrong, (await door.ask(path, { headers: { cookie: wrong } })).status]).toEqual([wrong, 401])
  })

  it('another name that leads to this machine is not our address', async () => {
    for (const host of ['evil.example', `localhost:${door.port}`, '127.0.0.1', `127.0.0.1:${door.port + 1}`, `[::1]:${door.port}`])
      expect(statusOf(await door.raw(head('GET /checks HTTP/1.1', `Host: ${host}`, `Cookie: ${cookie}`, 'Connection: close')))).toBe(421)
    expect(statusOf(await door.raw(head('GET /checks HTTP/1.1', `Cookie: ${cookie}`, 'Connection: close')))).toBe(400)
  })

  it('another page cannot hand anything in, nor read', async () => {
    for (const origin of ['http://evil.example', 'null', 'http://127.0.0.1', `http://localhost:${door.port}`, `https://127.0.0.1:${door.port}`])
      expect((await door.send(cookie, pictureId(20), await photograph(20), { headers: { origin } })).status).toBe(403)
    expect(statusOf(await door.raw(head('POST /photographs HTTP/1.1', `Host: 127.0.0.1:${door.port}`, `Cookie: ${cookie}`, 'Content-Type: application/octet-stream', 'Content-Length: 0', 'Connection: close')))).toBe(403)
    expect((await door.ask('checks', { headers: { cookie, 'sec-fetch-site': 'cross-site' } })).status).toBe(403)
  })

  it('another survey is out of reach: what is sent goes to this one, whatever it says', async () => {
    const other = await at.newSurvey()
    const answer = await door.send(cookie, pictureId(21), await photograph(21), { about: { surveyId: other } })
    expect(answer.status).toBe(200)
    expect((await at.opened.desk['surveys.get']({ surveyId: other })).photographs).toEqual([])
  })

  it('a replayed secret, after the door was opened anew, is a wrong one', async () => {
    const first = await runDoor()
    try {
      const before = await first.openDoor()
      const after = await first.openDoor()
      expect((await after.pair(before.secret)).status).toBe(403)
    } finally {
      await first.stop()
    }
  })
})

describe('what is sent', () => {
  const upload = (...headers: string[]): string =>
    head('POST /photographs HTTP/1.1', `Host: 127.0.0.1:${door.port}`, `Origin: ${door.origin}`, `Cookie: ${cookie}`, 'Content-Type: application/octet-stream', `x-bunkwright-input: ${encodeURIComponent(JSON.stringify({ pictureId: pictureId(30), fileName: 'a.jpg' }))}`, ...headers)

  it('300 MB are turned away before they are sent', async () => {
    const answer = await door.raw(upload('Content-Length: 300000000'), 1_000)
    expect(statusOf(answer)).toBe(413)
    expect(answer).toContain('larger than')
  })

  it('a body without its length, or longer than it says, is not read', async () => {
    expect(statusOf(await door.raw(`${upload('Transfer-Encoding: chunked')}5\r\nhello\r\n0\r\n\r\n`, 1_000))).toBe(411)
    expect([400, 422]).toContain(statusOf(await door.raw(`${upload('Content-Length: 3')}hello`, 1_000)))
  })

  it.each([
    ['no input', {}, undefined], ['no JSON', {}, '%7Bx'], ['a broken escape', {}, '%'], ['no picture’s id', {}, encodeURIComponent('{"fileName":"a"}')], ['an id with path parts', {}, encodeURIComponent('{"pictureId":"../../../../etc/pa","fileName":"a"}')],
    ['another type', { 'content-type': 'text/plain' }, encodeURIComponent(`{"pictureId":"${'a'.repeat(20)}","fileName":"a"}`)],
  ])('%s is refused', async (_name, headers, input) => {
    const answer = await door.ask('photographs', { method: 'POST', body: 'x', headers: { origin: door.origin, cookie, 'content-type': 'application/octet-stream', ...(input !== undefined && { 'x-bunkwright-input': input }), ...headers } })
    expect([400, 415]).toContain(answer.status)
  })

  it('headers and pairing beyond all measure are refused', async () => {
    expect([400, 431]).toContain(statusOf(await door.raw(head('GET /checks HTTP/1.1', `Host: 127.0.0.1:${door.port}`, `X-Long: ${'a'.repeat(40_000)}`))))
    expect((await door.ask('pair', { method: 'POST', headers: { origin: door.origin, 'content-type': 'application/json' }, body: `{"secret":"${'a'.repeat(10_000)}"}` })).status).toBe(413)
  })

  it('after all of it nothing was kept that should not be, and no fault was ours', async () => {
    expect((await at.kept()).length).toBe(1)
    expect(await at.halves()).toEqual([])
    expect(at.faults).toEqual([])
  })
})

describe('many and slow', () => {
  const hold = (text: string): Promise<Socket> =>
    new Promise((resolve) => {
      const socket = connect(door.port, '127.0.0.1', () => socket.write(text))
      socket.on('error', () => undefined)
      socket.on('connect', () => resolve(socket))
      setTimeout(() => resolve(socket), 2_000).unref()
    })

  it('a thousand lines are cut down to few, memory stays, and the desk answers meanwhile', async () => {
    globalThis.gc?.()
    const before = process.memoryUsage().rss
    const sockets = await Promise.all(Array.from({ length: 1_000 }, () => hold(`POST /pair HTTP/1.1\r\nHost: 127.0.0.1:${door.port}\r\nX-Slow: `)))
    await new Promise((resolve) => setTimeout(resolve, 500))
    expect(sockets.filter((socket) => !socket.destroyed && socket.readyState === 'open').length).toBeLessThanOrEqual(12)
    const begun = performance.now()
    await at.opened.desk['yard.about']({})
    expect(performance.now() - begun).toBeLessThan(1_000)
    expect(process.memoryUsage().rss - before).toBeLessThan(100_000_000)
    for (const socket of sockets) socket.destroy()
    await expect.poll(async () => door.ask('checks', { headers: { cookie } }).then(({ status }) => status, () => 0), { timeout: 20_000 }).toBe(200)
  })

  it('a promised body that does not come, and headers that never end, are cut', async () => {
    const slow = await hold(`POST /photographs HTTP/1.1\r\nHost: 127.0.0.1:${door.port}\r\nOrigin: ${door.origin}\r\nCookie: ${cookie}\r\nContent-Type: application/octet-stream\r\nContent-Length: 1000000\r\nx-bunkwright-input: ${encodeURIComponent(JSON.stringify({ pictureId: pictureId(40), fileName: 'a.jpg' }))}\r\n\r\n`)
    const endless = await hold(`GET /checks HTTP/1.1\r\nHost: 127.0.0.1:${door.port}\r\n`)
    const cut = (socket: Socket): Promise<void> => new Promise((resolve) => {
      socket.on('close', () => resolve())
      socket.resume()
    })
    const drip = setInterval(() => slow.write('x'), 1_000)
    await Promise.all([cut(slow), cut(endless)])
    clearInterval(drip)
    expect((await door.ask('checks', { headers: { cookie } })).status).toBe(200)
  }, 60_000)
})
