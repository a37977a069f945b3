import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { connect } from 'node:net'
import { contentPolicy } from '../../../main/serving/headers'
import { runHost, type RunningHost } from './running-host'

let at: RunningHost
beforeAll(async () => {
  at = await runHost()
})
afterAll(() => at.stop())

const statusOf = (answer: string): number => Number(/^HTTP\/1\.1 (\d{3})/.exec(answer)?.[1] ?? 0)
const request = (line: string, ...headers: string[]): string => `${[line, ...headers].join('\r\n')}\r\n\r\n`

describe('the address', () => {
  it('is on 127.0.0.1 alone and carries a token of 256 bits', () => {
    const address = new URL(at.host.address)
    expect(address.hostname).toBe('127.0.0.1')
    expect(Buffer.from(address.searchParams.get('token') ?? '', 'base64url')).toHaveLength(32)
  })

  it('is traded for a cookie that scripts and other sites do not see, and for an address without the token', async () => {
    const entered = await fetch(at.host.address, { redirect: 'manual' })
    expect(entered.status).toBe(303)
    expect(entered.headers.get('location')).toBe('/')
    expect(entered.headers.get('set-cookie')).toMatch(/^bunkwright-\d+=[\w-]{43}; Path=\/; HttpOnly; SameSite=Strict$/)
    expect(entered.headers.get('cache-control')).toBe('no-store')
  })

  it('lets nobody in with a wrong, empty, longer or repeated token', async () => {
    const { token } = Object.fromEntries(new URL(at.host.address).searchParams)
    for (const wrong of ['', 'x', `${token ?? ''}x`, (token ?? '').slice(1), '%00', 'a'.repeat(10_000)]) {
      const answer = await fetch(`${at.origin}/?token=${wrong}`, { redirect: 'manual' })
      expect([wrong.slice(0, 5), answer.status, answer.headers.get('set-cookie')]).toEqual([wrong.slice(0, 5), 403, null])
    }
  })

  it('handed to a browser on a command line opens once, and not after a minute', async () => {
    let nowMs = 0
    const other = await runHost(() => nowMs)
    try {
      const once = other.host.addressForOnce()
      expect((await fetch(once, { redirect: 'manual' })).status).toBe(303)
      expect((await fetch(once, { redirect: 'manual' })).status).toBe(403)
      const late = other.host.addressForOnce()
      nowMs = 60_001
      expect((await fetch(late, { redirect: 'manual' })).status).toBe(403)
    } finally {
      await other.stop()
    }
  })
})

describe('a caller without the cookie', () => {
  it.each(['', 'index.html', `photographs/${'a'.repeat(64)}/small`, 'assets/index-AbCd1234.js'])('is shown nothing of /%s', async (path) => {
    expect((await fetch(`${at.origin}/${path}`)).status).toBe(403)
  })

  it.each(['bunkwright=x', 'bunkwright-1=x', '', ';;;=;', 'a'.repeat(5_000)])('may not call with the cookie %j', async (cookie) => {
    expect((await at.call('rigs.list', {}, { cookie })).status).toBe(403)
  })
})

describe('another page', () => {
  it.each(['evil.example', 'localhost', '127.0.0.1', '127.0.0.1:1', '[::1]', ''])('that comes by the Host %j is turned away with 421', async (host) => {
    const answer = await at.raw(request('GET / HTTP/1.1', `Host: ${host}`, `Cookie: ${at.cookie}`))
    expect(statusOf(answer)).toBe(421)
  })

  it('without any Host is turned away', async () => {
    expect(statusOf(await at.raw(request('GET / HTTP/1.1', `Cookie: ${at.cookie}`)))).toBe(400)
    expect(statusOf(await at.raw(request('GET / HTTP/1.0', `Cookie: ${at.cookie}`)))).toBe(421)
  })

  it.each(['https://evil.example', 'null', 'http://127.0.0.1', 'http://localhost:1', ''])('of origin %j may not write', async (origin) => {
    const answer = await at.call('rigs.save', { rig: { name: 'Foreign', trailer: {} } }, { origin })
    expect(answer.status).toBe(403)
    expect((await at.opened.desk['rigs.list']({ offset: 0, limit: 50 })).total).toBe(0)
  })

  it('may not write without saying its origin', async () => {
    const answer = await at.raw(request('POST /api/rigs.list HTTP/1.1', `Host: 127.0.0.1:${at.port}`, `Cookie: ${at.cookie}`, 'Content-Type: application/json', 'Content-Length: 2', 'Connection: close').concat('{}'))
    expect(statusOf(answer)).toBe(403)
  })

  it.each(['cross-site', 'same-site'])('may not show our pictures (Sec-Fetch-Site: %s)', async (site) => {
    const answer = await at.raw(request('GET /index.html HTTP/1.1', `Host: 127.0.0.1:${at.port}`, `Cookie: ${at.cookie}`, `Sec-Fetch-Site: ${site}`, 'Connection: close'))
    expect(statusOf(answer)).toBe(403)
  })

  it('of another host on this machine does not take our cookie’s place: its name carries the port', () => {
    expect(at.cookie.startsWith(`bunkwright-${at.port}=`)).toBe(true)
  })
})

describe('every answer', () => {
  it.each([['', 200], ['nothing-here', 404], ['?token=wrong', 403]])('at /%s carries the policy and its companions', async (path, status) => {
    const answer = await at.get(path)
    expect(answer.status).toBe(status)
    expect(answer.headers.get('content-security-policy')).toBe(contentPolicy)
    expect(answer.headers.get('x-content-type-options')).toBe('nosniff')
    expect(answer.headers.get('referrer-policy')).toBe('no-referrer')
    expect(answer.headers.get('cross-origin-opener-policy')).toBe('same-origin')
    expect(answer.headers.get('cross-origin-resource-policy')).toBe('same-origin')
    // The window's camera view may ask for the camera; nothing else of the system may be asked for.
    const features = answer.headers.get('permissions-policy')?.split(', ') ?? []
    expect(features.filter((feature) => !feature.endsWith('=()'))).toEqual(['camera=(self)'])
    expect(features).toEqual(expect.arrayContaining(['microphone=()', 'geolocation=()', 'display-capture=()', 'usb=()', 'serial=()', 'hid=()', 'payment=()']))
    expect(answer.headers.get('x-powered-by')).toBeNull()
    expect(answer.headers.get('access-control-allow-origin')).toBeNull()
  })

  it('allows no inline script, no inline style, no frame and nothing from elsewhere', () => {
    expect(contentPolicy).not.toMatch(/unsafe|\*|https?:/)
    expect(contentPolicy).toContain("default-src 'none'")
    expect(contentPolicy).toContain("frame-ancestors 'none'")
  })
})

describe('a path', () => {
  it.each([
    '/../secret.json', '/..%2fsecret.json', '/%2e%2e/secret.json', '/%2e%2e%2fsecret.json', '/assets/../../secret.json', '/assets/..%5c..%5csecret.json',
    '/assets//etc/passwd', '//etc/passwd', '/./index.html/../../secret.json', '/link.json', '/notes.secret', '/assets', '/assets/', '/.stamp', '/index.html%00.js', '/C:/Windows/win.ini', '/file:///etc/passwd',
  ])('%s leads to nothing', async (path) => {
    const answer = await at.raw(request(`GET ${path} HTTP/1.1`, `Host: 127.0.0.1:${at.port}`, `Cookie: ${at.cookie}`, 'Connection: close'))
    expect(statusOf(answer)).toBe(404)
    expect(answer).not.toContain('secret')
    expect(answer).not.toContain('root:')
  })

  it('that is a whole address of elsewhere is not followed', async () => {
    expect(statusOf(await at.raw(request('GET http://evil.example/ HTTP/1.1', `Host: 127.0.0.1:${at.port}`, `Cookie: ${at.cookie}`, 'Connection: close')))).toBe(400)
  })

  it.each([
    ['/photographs/xyz/small'], [`/photographs/${'0'.repeat(64)}/small`], [`/photographs/${'0'.repeat(64)}/huge`], [`/photographs/${'0'.repeat(64)}/../../yard.sqlite`],
    ['/reports/../yard.sqlite'], ['/reports/yard.sqlite'], ['/reports/0198c0de-0000-7000-8000-000000000000.pdf'], ['/yard.sqlite'],
  ])('%s names nothing recorded', async (path) => {
    expect(statusOf(await at.raw(request(`GET ${path} HTTP/1.1`, `Host: 127.0.0.1:${at.port}`, `Cookie: ${at.cookie}`, 'Connection: close')))).toBe(404)
  })

  it('of a file whose name carries its hash may be kept for ever; the page itself is asked for again', async () => {
    expect((await at.get('assets/index-AbCd1234.js')).headers.get('cache-control')).toContain('immutable')
    expect((await at.get('')).headers.get('cache-control')).toBe('no-cache')
  })
})

describe('a method', () => {
  it.each(['PUT', 'DELETE', 'PATCH', 'OPTIONS', 'TRACE', 'PROPFIND'])('%s is not answered', async (method) => {
    const answer = await at.raw(request(`${method} / HTTP/1.1`, `Host: 127.0.0.1:${at.port}`, `Cookie: ${at.cookie}`, `Origin: ${at.origin}`, 'Content-Length: 0', 'Connection: close'))
    expect(statusOf(answer)).toBe(405)
  })

  it('GET does not call a procedure', async () => {
    expect((await at.get('api/rigs.list')).status).toBe(404)
  })

  it('POST writes no file', async () => {
    const answer = await fetch(`${at.origin}/index.html`, { method: 'POST', body: '{}', headers: { cookie: at.cookie, origin: at.origin } })
    expect(answer.status).toBe(405)
  })
})

describe('a header', () => {
  it('of 40 kB is refused', async () => {
    expect(statusOf(await at.raw(request('GET / HTTP/1.1', `Host: 127.0.0.1:${at.port}`, `X-Long: ${'a'.repeat(40_000)}`)))).toBe(431)
  })

  it('that says two lengths, or a length and chunks, is refused', async () => {
    const start = ['POST /api/rigs.list HTTP/1.1', `Host: 127.0.0.1:${at.port}`, `Cookie: ${at.cookie}`, `Origin: ${at.origin}`, 'Content-Type: application/json'] as const
    expect(statusOf(await at.raw(request(...start, 'Content-Length: 2', 'Content-Length: 3').concat('{}x')))).toBe(400)
    expect(statusOf(await at.raw(request(...start, 'Content-Length: 2', 'Transfer-Encoding: chunked').concat('0\r\n\r\n')))).toBe(400)
  })
})

describe('many lines at once', () => {
  it('are bounded, and the window still gets its answer when they are gone', async () => {
    const lines = Array.from({ length: 200 }, () => connect(at.port, '127.0.0.1'))
    const closed = await Promise.all(lines.map((line) => new Promise<boolean>((resolve) => {
      line.on('close', () => resolve(true))
      line.on('error', () => undefined)
      setTimeout(() => resolve(false), 500)
    })))
    expect(closed.filter(Boolean).length).toBeGreaterThanOrEqual(200 - 64)
    for (const line of lines) line.destroy()
    await new Promise((resolve) => setTimeout(resolve, 100))
    expect((await at.call('rigs.list', {})).status).toBe(200)
  })
})
