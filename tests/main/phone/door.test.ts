import { createHash, X509Certificate } from 'node:crypto'
import { connect as connectSecurely } from 'node:tls'
import { networkInterfaces } from 'node:os'
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest'
import { networkAddresses } from '../../../main/phone/network'
import { checksReplySchema } from '../../../shared-logic/phone/phone-door'
import { phoneStateSchema } from '../../../shared-logic/phone/phone-state'
import { photograph } from '../host/running-host'
import { pictureId, runDoor, type Door, type RunningDoor } from './running-door'

let nowMs = Date.now()
let at: RunningDoor
let door: Door
beforeAll(async () => {
  at = await runDoor(() => nowMs)
})
afterAll(() => at.stop())
beforeEach(async () => {
  door = await at.openDoor()
})

const refusalOf = async (response: Response): Promise<{ readonly status: number; readonly code: string; readonly sentence: string }> => {
  const { refusal, sentence } = (await response.json()) as { refusal: { code: string }; sentence: string }
  return { status: response.status, code: refusal.code, sentence }
}

describe('pairing', () => {
  it('is by a secret of 256 bits behind the #, which no request carries', () => {
    expect(phoneStateSchema.parse(door.state)).toEqual(door.state)
    const address = new URL(door.state.pairingAddress ?? '')
    expect(Buffer.from(address.hash.slice(1), 'base64url')).toHaveLength(32)
    expect(address.search).toBe('')
    expect(door.state.address).not.toContain(door.secret)
  })

  it('gives a cookie that scripts and other sites do not see', async () => {
    const paired = await door.pair(door.secret)
    expect(paired.status).toBe(200)
    expect(paired.headers.get('set-cookie')).toMatch(new RegExp(`^bunkwright-phone-${door.port}=[\\w-]{43}; Path=/; Max-Age=3600; HttpOnly; SameSite=Strict$`))
  })

  it('shows the surveyor which phone, and the code no more', async () => {
    await door.enter()
    const { door: now } = await at.opened.desk['phone.state']({ surveyId: at.surveyId })
    expect(now?.phone?.name).toBe('A phone')
    expect(now?.pairingAddress).toBeUndefined()
  })

  it('turns a second phone away that comes with the used code, and lets the paired one open its address again', async () => {
    const cookie = await door.enter()
    expect(await refusalOf(await door.pair(door.secret))).toMatchObject({ status: 403, code: 'phone.used-secret', sentence: expect.stringContaining('Another phone') })
    expect((await door.pair(door.secret, { cookie })).status).toBe(200)
  })

  it('names the connection: the same to the paired phone each time, another one at the next door, and no picture is taken for another', async () => {
    const idOf = async (reply: Response): Promise<string> => ((await reply.json()) as { connectionId: string }).connectionId
    const first = await door.pair(door.secret)
    const cookie = first.headers.get('set-cookie')?.split(';')[0] ?? ''
    const connectionId = await idOf(first)
    expect(await idOf(await door.pair(door.secret, { cookie }))).toBe(connectionId)
    expect(await idOf(await door.ask('checks', { headers: { cookie } }))).toBe(connectionId)
    const next = await at.openDoor()
    const nextCookie = await next.enter()
    expect(await idOf(await next.ask('checks', { headers: { cookie: nextCookie } }))).not.toBe(connectionId)
    expect(await refusalOf(await next.send(nextCookie, pictureId(11), await photograph(11), { about: { connectionId } }))).toMatchObject({ status: 409, code: 'phone.other-connection' })
    expect((await at.kept()).length).toBe(0)
  })

  // macOS gives this machine one loopback address alone.
  it.skipIf(process.platform === 'darwin')('holds the code from an address after ten wrong ones, and lets the phone in that comes from another', async () => {
    for (let guess = 0; guess < 10; guess += 1) expect(await refusalOf(await door.pair(`wrong-${guess}`))).toMatchObject({ status: 403, code: 'phone.wrong-secret' })
    expect(await refusalOf(await door.pair(door.secret))).toMatchObject({ status: 403, code: 'phone.withdrawn' })
    expect((await at.opened.desk['phone.state']({ surveyId: at.surveyId })).door?.pairingAddress).toBe(door.state.pairingAddress)
    expect(await door.pairFrom('127.0.0.2', door.secret)).toBe(200)
  })

  it.skipIf(process.platform === 'darwin')('withdraws the code from all after a hundred wrong ones from many addresses', async () => {
    for (let address = 2; address < 12; address += 1)
      for (let guess = 0; guess < 10; guess += 1) expect(await door.pairFrom(`127.0.0.${address}`, `wrong-${guess}`)).toBe(403)
    expect(await refusalOf(await door.pair(door.secret))).toMatchObject({ status: 403, code: 'phone.withdrawn' })
    expect((await at.opened.desk['phone.state']({ surveyId: at.surveyId })).door?.pairingAddress).toBeUndefined()
  })
})

describe('a paired phone', () => {
  it('reads the titles of the checks in walking order and which are open, and nothing else of the survey', async () => {
    const cookie = await door.enter()
    const text = await (await door.ask('checks', { headers: { cookie } })).text()
    const { stations } = checksReplySchema.parse(JSON.parse(text))
    expect(stations[0]?.title).toBe('Papers and plates')
    expect(stations.flatMap(({ checks }) => checks).length).toBeGreaterThan(50)
    const { rig } = await at.opened.desk['surveys.get']({ surveyId: at.surveyId })
    expect(text).not.toContain(rig.name)
    const keys = new Set(Array.from(text.matchAll(/"(\w+)":/g), ([, key]) => key))
    expect(keys).toEqual(new Set(['checkId', 'checks', 'closesAt', 'connectionId', 'isOpen', 'place', 'position', 'stations', 'title']))
  })

  it('hands over a picture to a check, kept to the byte, and told to the surveyor', async () => {
    const cookie = await door.enter()
    const bytes = await photograph(1)
    const { stations } = checksReplySchema.parse(await (await door.ask('checks', { headers: { cookie } })).json())
    const [check] = stations[0]?.checks ?? []
    const sent = await door.send(cookie, pictureId(1), bytes, { about: { checkId: check?.checkId, position: check?.position } })
    const reply: unknown = await sent.json()
    expect(reply).toMatchObject({ pictureId: pictureId(1), alreadyThere: false, warnings: [expect.stringContaining('64 × 48')] })
    const kept = (await at.kept()).find(({ sha256 }) => sha256 === createHash('sha256').update(bytes).digest('hex'))
    expect(kept).toMatchObject({ source: 'phone', checkId: check?.checkId, position: check?.position, byteCount: bytes.byteLength })
    const { door: now } = await at.opened.desk['phone.state']({ surveyId: at.surveyId })
    expect(now?.arrived.map(({ photographId }) => photographId)).toEqual([kept?.id])
    expect(await (await door.ask('arrived', { headers: { cookie } })).json()).toEqual({ pictureIds: [pictureId(1)], told: [reply] })
  })

  it('is told at once what may be wrong with a picture, which is kept all the same', async () => {
    const cookie = await door.enter()
    const answer = (await (await door.send(cookie, pictureId(9), await photograph(9))).json()) as { warnings: string[] }
    expect(answer.warnings).toEqual([expect.stringContaining('64 × 48')])
    expect((await at.kept()).at(-1)).toMatchObject({ source: 'phone', widthPx: 64 })
  })

  it('sends a picture again under its name and it is kept once, however it was sent', async () => {
    const cookie = await door.enter()
    const before = (await at.kept()).length
    const bytes = await photograph(2)
    const atOnce = await Promise.all([1, 2, 3].map(() => door.send(cookie, pictureId(2), bytes)))
    expect(atOnce.map(({ status }) => status)).toEqual([200, 200, 200])
    const again: unknown = await (await door.send(cookie, pictureId(2), bytes)).json()
    expect(again).toMatchObject({ alreadyThere: false })
    // Under another name the same bytes are the same photograph.
    const same: unknown = await (await door.send(cookie, pictureId(3), bytes)).json()
    expect(same).toMatchObject({ alreadyThere: true })
    expect((await at.kept()).length).toBe(before + 1)
    // And so the surveyor is told; the phone hears of each name.
    expect((await at.opened.desk['phone.state']({ surveyId: at.surveyId })).door?.arrived).toHaveLength(1)
    expect(await (await door.ask('arrived', { headers: { cookie } })).json()).toEqual({ pictureIds: [pictureId(2), pictureId(3)], told: [again, same] })
  })

  it('sends a picture that the surveyor had before, or has taken away since: the one did not come through this door, the other comes last', async () => {
    const cookie = await door.enter()
    const [had, away, other] = await Promise.all([21, 22, 23].map(photograph))
    if (!had || !away || !other) throw new Error('no pictures')
    await at.opened.desk['photographs.add']({ surveyId: at.surveyId, fileName: 'had.jpg', source: 'file' }, had)
    for (const [number, bytes] of [[12, had], [13, away], [14, other]] as const) await (await door.send(cookie, pictureId(number), bytes)).text()
    const idOf = async (name: string): Promise<string> => (await at.kept()).find(({ fileName }) => fileName === `${name}.jpg`)?.id ?? ''
    const arrived = async (): Promise<(string | undefined)[]> => (await at.opened.desk['phone.state']({ surveyId: at.surveyId })).door?.arrived.map(({ photographId }) => photographId) ?? []
    const [awayId, otherId] = [await idOf(pictureId(13)), await idOf(pictureId(14))]
    expect(await arrived()).toEqual([awayId, otherId])
    await at.opened.desk['photographs.remove']({ photographId: awayId })
    expect(await (await door.send(cookie, pictureId(15), away)).json()).toMatchObject({ alreadyThere: false })
    expect(await arrived()).toEqual([otherId, awayId])
  })

  it('is told in a sentence what cannot be taken, and may send it again', async () => {
    const cookie = await door.enter()
    const before = (await at.kept()).length
    const notOne = await refusalOf(await door.send(cookie, pictureId(4), Buffer.from('this is no picture')))
    expect(notOne).toMatchObject({ status: 422, code: 'photograph.not-a-photograph', sentence: expect.stringContaining('not a photograph') })
    expect(await refusalOf(await door.send(cookie, pictureId(5), await photograph(5), { about: { checkId: 'hubs.no-such', position: 'rig' } }))).toMatchObject({ status: 422, code: 'answer.not-asked' })
    expect((await at.kept()).length).toBe(before)
    expect((await door.send(cookie, pictureId(4), await photograph(4))).status).toBe(200)
  })

  it('whose upload breaks off leaves nothing half-kept', async () => {
    const cookie = await door.enter()
    const before = (await at.kept()).length
    const half = `POST /photographs HTTP/1.1\r\nHost: 127.0.0.1:${door.port}\r\nOrigin: ${door.origin}\r\nCookie: ${cookie}\r\nContent-Type: application/octet-stream\r\nContent-Length: 100000\r\nx-bunkwright-input: ${encodeURIComponent(JSON.stringify({ pictureId: pictureId(6), fileName: 'a.jpg' }))}\r\n\r\n`
    await door.raw(Buffer.concat([Buffer.from(half), (await photograph(6)).subarray(0, 300)]), 300)
    expect((await at.kept()).length).toBe(before)
    expect(await at.halves()).toEqual([])
    expect(await (await door.ask('arrived', { headers: { cookie } })).json()).toEqual({ pictureIds: [], told: [] })
    expect((await door.send(cookie, pictureId(6), await photograph(6))).status).toBe(200)
  })

  it('names its picture as it likes, and no part of a path comes in', async () => {
    const cookie = await door.enter()
    expect((await door.send(cookie, pictureId(7), await photograph(7), { about: { fileName: '../../..\\x\u202Egpj.jpg' } })).status).toBe(200)
    expect((await at.kept()).at(-1)?.fileName).toBe('xgpj.jpg')
  })
})

describe('the door closes', () => {
  const isRefused = async (ended: Door, cookie: string): Promise<boolean> => ended.ask('checks', { headers: { cookie } }).then(({ status }) => status === 410, () => true)

  it('by the button, and the phone is told when it next asks', async () => {
    const cookie = await door.enter()
    await at.opened.desk['phone.close']({ surveyId: at.surveyId })
    expect(await refusalOf(await door.ask('arrived', { headers: { cookie } }))).toMatchObject({ status: 410, code: 'phone.closed' })
    expect(await refusalOf(await door.send(cookie, pictureId(9), await photograph(9)))).toMatchObject({ status: 410, code: 'phone.closed' })
    expect((await at.opened.desk['phone.state']({ surveyId: at.surveyId })).door).toBeUndefined()
  })

  it('and the page still opens for what waits on the phone, with its files', async () => {
    await at.opened.desk['phone.close']({ surveyId: at.surveyId })
    const page = await door.ask('')
    expect([page.status, await page.text()]).toEqual([410, expect.stringContaining('<title>the phone</title>')])
    expect((await door.ask('assets/phone-AbCd1234.js')).status).toBe(200)
    expect(await refusalOf(await door.pair(door.secret))).toMatchObject({ status: 410, code: 'phone.closed' })
  })

  it('and a while after there is nothing to ask any more', async () => {
    await at.opened.desk['phone.close']({ surveyId: at.surveyId })
    await expect.poll(() => door.ask('arrived').then(() => 'answered', () => 'nobody there'), { timeout: 20_000, interval: 1_000 }).toBe('nobody there')
  })

  it('when its time is up', async () => {
    const cookie = await door.enter()
    nowMs += 61 * 60_000
    expect(await refusalOf(await door.ask('checks', { headers: { cookie } }))).toMatchObject({ status: 410, code: 'phone.closed' })
    expect(await refusalOf(await door.send(cookie, pictureId(8), await photograph(8)))).toMatchObject({ status: 410 })
  })

  it('at the survey’s end', async () => {
    const surveyId = await at.newSurvey()
    const other = await at.openDoor({ surveyId })
    const cookie = await other.enter()
    await at.opened.desk['surveys.discard']({ surveyId })
    expect(await isRefused(other, cookie)).toBe(true)
    await expect(at.opened.desk['phone.open']({ surveyId, minutes: 60, isSecure: false })).rejects.toMatchObject({ data: { code: 'survey.not-found' } })
  })

  it('when another one is opened', async () => {
    const cookie = await door.enter()
    const next = await at.openDoor()
    // At the same address, where the phone's browser finds what it kept; but the phone is a stranger there.
    expect(next.origin).toBe(door.origin)
    expect(next.secret).not.toBe(door.secret)
    expect((await next.ask('checks', { headers: { cookie } })).status).toBe(401)
  })
})

it('over HTTPS shows the certificate whose fingerprint the surveyor reads, for that address alone', async () => {
  const secure = await at.openDoor({ isSecure: true })
  expect(secure.state.address).toMatch(/^https:/)
  const cert = await new Promise<X509Certificate>((resolve, reject) => {
    const socket = connectSecurely({ port: secure.port, host: '127.0.0.1', rejectUnauthorized: false }, () => {
      const shown = socket.getPeerX509Certificate()
      socket.destroy()
      if (shown) resolve(shown)
      else reject(new Error('no certificate'))
    })
    socket.on('error', reject)
  })
  expect(cert.fingerprint256).toBe(secure.state.certificateFingerprint)
  expect(cert.checkIP('127.0.0.1')).toBe('127.0.0.1')
  expect(cert.checkIP('192.168.1.1')).toBeUndefined()
})

describe('which network', () => {
  const of = (address: string, internal = false) => ({ address, internal, family: address.includes(':') ? 'IPv6' : 'IPv4', netmask: '', mac: '', cidr: null }) as ReturnType<typeof networkInterfaces>[string] extends (infer Info)[] | undefined ? Info : never
  it('private addresses go first; loopback and link-local reach no phone', () => {
    expect(networkAddresses({ lo: [of('127.0.0.1', true)], vpn: [of('100.64.0.3')], usb: [of('169.254.7.7')], cable: [of('10.0.0.5'), of('fe80::1')], wireless: [of('192.168.1.20'), of('fd12:3456::7')] }).map(({ address }) => address))
      .toEqual(['192.168.1.20', '10.0.0.5', 'fd12:3456::7', '100.64.0.3'])
  })
  it('an address that is not this machine’s is refused by name', async () => {
    const { makePhoneDoor } = await import('../../../main/phone/phone-door')
    const away = makePhoneDoor({ rendererFolder: at.folder, now: Date.now, onFault: () => undefined })(() => at.opened.desk)
    await expect(away.open({ surveyId: at.surveyId, minutes: 5, isSecure: false, address: '192.168.255.254' })).rejects.toMatchObject({ data: { code: 'phone.no-such-address' } })
  })
})
