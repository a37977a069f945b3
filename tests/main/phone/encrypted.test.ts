import { createHash, X509Certificate } from 'node:crypto'
import { request } from 'node:https'
import { connect } from 'node:net'
import { connect as connectSecurely, type PeerCertificate } from 'node:tls'
import { afterAll, beforeAll, expect, it } from 'vitest'
import { inputHeader } from '../../../shared-logic/contract/input-header'
import { photograph } from '../host/running-host'
import { pictureId, runDoor, type Door, type RunningDoor } from './running-door'

let at: RunningDoor
let door: Door
/** What the door shows to whoever comes. */
let shown: X509Certificate
beforeAll(async () => {
  at = await runDoor()
  door = await at.openDoor({ isSecure: true })
  shown = await new Promise<X509Certificate>((resolve, reject) => {
    const socket = connectSecurely({ port: door.port, host: '127.0.0.1', rejectUnauthorized: false }, () => {
      const certificate: PeerCertificate = socket.getPeerCertificate()
      socket.destroy()
      resolve(new X509Certificate(certificate.raw))
    })
    socket.on('error', reject)
  })
})
afterAll(() => at.stop())

interface Heard {
  readonly status: number
  readonly headers: NodeJS.Dict<string | string[]>
  readonly text: string
}

/** Asks as a browser that has been told to believe this certificate, and no other. */
const ask = (path: string, { method = 'GET', headers = {}, body = '' }: { readonly method?: string; readonly headers?: Record<string, string>; readonly body?: string | Uint8Array } = {}): Promise<Heard> =>
  new Promise((resolve, reject) => {
    const asking = request(`${door.origin}/${path}`, { method, ca: shown.toString(), agent: false, headers: { ...headers, 'content-length': Buffer.byteLength(body) } }, (answer) => {
      let text = ''
      answer.on('data', (chunk: Buffer) => { text += chunk.toString() })
      answer.on('end', () => resolve({ status: answer.statusCode ?? 0, headers: answer.headers, text }))
    })
    asking.on('error', reject)
    asking.end(body)
  })

it('the fingerprint the surveyor reads is that of the certificate shown: SHA-256 over its DER, in pairs of hex digits', () => {
  const sha256 = createHash('sha256').update(shown.raw).digest('hex').toUpperCase()
  expect(door.state.certificateFingerprint).toBe(sha256.match(/../g)?.join(':'))
  expect(door.state).toMatchObject({ isSecure: true, address: expect.stringMatching(/^https:/) })
})

it('the certificate is for this address alone, for a server alone, signs no other, and is over within days', () => {
  expect(shown.checkIP('127.0.0.1')).toBe('127.0.0.1')
  expect(shown.checkIP('192.168.1.1')).toBeUndefined()
  expect(shown.subjectAltName).toBe('IP Address:127.0.0.1')
  // TLS Web Server Authentication. Source: RFC 5280, section 4.2.1.12.
  expect(shown.keyUsage).toEqual(['1.3.6.1.5.5.7.3.1'])
  expect(shown.ca).toBe(false)
  expect(shown.verify(shown.publicKey)).toBe(true)
  expect(shown.validToDate.getTime() - Date.now()).toBeLessThan(2 * 86_400_000)
  expect(shown.validFromDate.getTime()).toBeLessThan(Date.now())
})

it('another door shows another certificate', async () => {
  const other = await runDoor()
  try {
    const { certificateFingerprint } = (await other.openDoor({ isSecure: true })).state
    expect(certificateFingerprint).toMatch(/^([0-9A-F]{2}:){31}[0-9A-F]{2}$/)
    expect(certificateFingerprint).not.toBe(door.state.certificateFingerprint)
  } finally {
    await other.stop()
  }
})

it('a phone that believes it pairs, reads the checks and hands a picture over; its cookie goes over HTTPS alone', async () => {
  const origin = { origin: door.origin }
  const paired = await ask('pair', { method: 'POST', headers: { ...origin, 'content-type': 'application/json' }, body: JSON.stringify({ secret: door.secret, phoneName: 'A phone' }) })
  const [setCookie = ''] = [paired.headers['set-cookie']].flat()
  expect(setCookie).toMatch(new RegExp(`^bunkwright-phone-${door.port}=[\\w-]{43}; Path=/; Max-Age=3600; HttpOnly; SameSite=Strict; Secure$`))
  expect(paired.headers['cross-origin-opener-policy']).toBe('same-origin')
  const cookie = setCookie.split(';')[0] ?? ''
  expect((await ask('checks', { headers: { cookie } })).status).toBe(200)
  const bytes = await photograph(1)
  const headers = { ...origin, cookie, 'content-type': 'application/octet-stream', [inputHeader]: encodeURIComponent(JSON.stringify({ pictureId: pictureId(1), fileName: 'a.jpg' })) }
  expect((await ask('photographs', { method: 'POST', headers, body: bytes })).status).toBe(200)
  expect((await at.kept()).map(({ sha256 }) => sha256)).toEqual([createHash('sha256').update(bytes).digest('hex')])
  // The same address without encryption is another origin.
  expect((await ask('photographs', { method: 'POST', headers: { ...headers, origin: door.origin.replace('https', 'http') }, body: bytes })).status).toBe(403)
})

it('who believes only the certificates of the world does not come in, and who speaks without encryption hears no HTTP', async () => {
  await expect(fetch(`${door.origin}/`)).rejects.toMatchObject({ cause: { code: 'DEPTH_ZERO_SELF_SIGNED_CERT' } })
  const heard = await door.raw(`GET / HTTP/1.1\r\nHost: 127.0.0.1:${door.port}\r\n\r\n`, 1_000)
  expect(heard).not.toContain('HTTP/1.1 200')
  expect(heard).not.toContain('<!doctype')
})

it('lines on which encryption is never begun are cut, and the phone is heard meanwhile', async () => {
  const silent = Array.from({ length: 8 }, () => connect(door.port, '127.0.0.1').on('error', () => undefined))
  const cut = Promise.all(silent.map((socket) => new Promise((resolve) => { socket.on('close', resolve).resume() })))
  expect((await ask('')).status).toBe(200)
  await cut
  expect((await ask('')).status).toBe(200)
}, 25_000)
