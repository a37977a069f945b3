import type { IncomingMessage, ServerResponse } from 'node:http'
import type { z } from 'zod'
import { Refusal } from '../../shared-logic/contract/refusal'
import { pairRequestSchema, phonePhotographSchema } from '../../shared-logic/phone/phone-door'
import { en } from '../../shared-logic/words/en'
import { bodyRefusal, fileLimitBytes } from '../serving/body'
import { hasType, jsonInBody, jsonInHeader, type ReadJson } from '../serving/request-json'
import { fileHeaders } from '../serving/served'
import { checkTitles } from './check-titles'
import { PhoneRefusal, send, sendJson, sendRefusal, turnAway } from './replies'
import type { Room } from './room'
import { takePicture } from './take-picture'

/** A pairing secret and a phone's name. */
const pairLimitBytes = 4_000

type Answer = (room: Room, request: IncomingMessage, response: ServerResponse) => Promise<void>

/** Parsed by its schema, or refused as what cannot be read. */
const parsed = <Schema extends z.ZodType>(schema: Schema, read: ReadJson): z.output<Schema> => {
  const result = read.ok ? schema.safeParse(read.value) : undefined
  return result?.success === true ? result.data : turnAway(400, 'door.not-json')
}

/** Whoever sends and does not wait for the answer cannot heap up bodies: no further one is read while those worked on fill the memory set aside. */
const withBody = <Result>({ bodies }: Room, request: IncomingMessage, limitBytes: number, work: (bytes: Uint8Array) => Promise<Result>): Promise<Result> =>
  bodies.readFor(request, limitBytes, async (body) => {
    if (body.ok) return work(body.bytes)
    const { status, refusal } = bodyRefusal(body.why, limitBytes)
    throw new PhoneRefusal(status, refusal)
  })

const needType = (request: IncomingMessage, type: Parameters<typeof hasType>[1]): void => {
  if (!hasType(request, type)) turnAway(415, 'door.not-json')
}

const standing = ({ closesAtMs, pairing: { connectionId } }: Room): { readonly closesAt: string; readonly connectionId: string } => ({ closesAt: new Date(closesAtMs).toISOString(), connectionId })

const pair: Answer = async (room, request, response) => {
  needType(request, 'application/json')
  const { secret, phoneName } = parsed(pairRequestSchema, await withBody(room, request, pairLimitBytes, async (bytes) => jsonInBody(bytes)))
  const reply = standing(room)
  // The paired phone that opens its address again is still the paired phone.
  if (room.pairing.knows(request, room.now())) return sendJson(request, response, 200, reply)
  const pairing = room.pairing.pair(secret, phoneName, request.socket.remoteAddress ?? '', room.now())
  return pairing.ok ? sendJson(request, response, 200, reply, { 'Set-Cookie': pairing.cookie }) : turnAway(403, pairing.why)
}

const checks: Answer = async (room, request, response) => {
  const survey = await room.desk['surveys.get']({ surveyId: room.surveyId })
  sendJson(request, response, 200, { ...standing(room), stations: checkTitles(survey, en) })
}

const arrived: Answer = async ({ arrivals: { kept } }, request, response) =>
  sendJson(request, response, 200, {
    pictureIds: kept.map(([pictureId]) => pictureId),
    told: kept.flatMap(([pictureId, { alreadyThere, warnings }]) => (alreadyThere || warnings.length > 0 ? [{ pictureId, alreadyThere, warnings }] : [])),
  })

/** The header is read before the body: what cannot be taken is turned away before it is sent. */
const photographs: Answer = async (room, request, response) => {
  needType(request, 'application/octet-stream')
  const about = parsed(phonePhotographSchema, jsonInHeader(request))
  if (about.connectionId !== undefined && about.connectionId !== room.pairing.connectionId) turnAway(409, 'phone.other-connection')
  if (room.arrivals.isFull && room.arrivals.known(about.pictureId) === undefined) turnAway(429, 'phone.too-many')
  const { alreadyThere, warnings } = await withBody(room, request, fileLimitBytes, (bytes) => takePicture(room, about, bytes))
  sendJson(request, response, 200, { pictureId: about.pictureId, alreadyThere, warnings })
}

/** Everything a phone may ask; all but pairing only by the paired one. */
const routes: ReadonlyMap<string, { readonly method: 'GET' | 'POST'; readonly answer: Answer; readonly isForAll?: true }> = new Map([
  ['/pair', { method: 'POST', answer: pair, isForAll: true }],
  ['/checks', { method: 'GET', answer: checks }],
  ['/arrived', { method: 'GET', answer: arrived }],
  ['/photographs', { method: 'POST', answer: photographs }],
])

/** Another page of the phone's browser, or another name that leads here. */
const refuseStranger = ({ origin }: Room, request: IncomingMessage): void => {
  if (`${new URL(origin).protocol}//${request.headers.host ?? ''}` !== origin) turnAway(421, 'phone.not-our-address')
  const site = request.headers['sec-fetch-site']
  const isPage = request.method === 'GET' && request.headers['sec-fetch-mode'] === 'navigate'
  if (site !== undefined && site !== 'same-origin' && site !== 'none' && !isPage) turnAway(403, 'door.stranger')
  if (request.method === 'POST' && request.headers.origin !== origin) turnAway(403, 'door.stranger')
}

/** Of a door that has closed, too, which says so by its status: on the phone may lie pictures that the page can still save there. */
const servePage: Answer = async ({ pages, isClosed }, request, response) => {
  const path = request.url?.slice(1) ?? ''
  const served = await pages(path)
  if (!served) return turnAway(404, 'phone.nothing-here')
  if (request.method !== 'GET' && request.method !== 'HEAD') return turnAway(405, 'phone.nothing-here')
  return send(response, path === '' && isClosed() ? 410 : 200, fileHeaders(served), served.bytes, request.method === 'GET')
}

const answer: Answer = async (room, request, response) => {
  refuseStranger(room, request)
  const route = routes.get(request.url ?? '')
  if (!route) return servePage(room, request, response)
  if (room.isClosed()) turnAway(410, 'phone.closed')
  if (route.method !== request.method) turnAway(405, 'phone.nothing-here')
  if (route.isForAll !== true && !room.pairing.knows(request, room.now())) turnAway(401, 'phone.not-paired')
  return route.answer(room, request, response)
}

/** A stranger who asks without end is not even refused any more; the paired phone is heard beside it, and told to slow down if it does so itself. */
const isHeard = ({ pairing, lines, questions, strangersQuestions, now }: Room, request: IncomingMessage): boolean => {
  if (!pairing.knows(request, now())) return strangersQuestions.take(request.socket.remoteAddress ?? '', now())
  lines.heardPhone(request.socket)
  return questions.take('', now()) || turnAway(429, 'door.busy')
}

/** Answers one request; whatever goes wrong is a refusal with its sentence, and a fault of ours is told to the terminal alone. */
export const answerPhone = async (room: Room, request: IncomingMessage, response: ServerResponse): Promise<void> => {
  try {
    if (isHeard(room, request)) await answer(room, request, response)
    else request.socket.destroy()
  } catch (error) {
    if (error instanceof PhoneRefusal) return sendRefusal(request, response, error)
    if (error instanceof Refusal) return sendRefusal(request, response, new PhoneRefusal(422, error.data))
    room.onFault(error)
    return sendRefusal(request, response, new PhoneRefusal(500, { code: 'program.fault' }))
  }
}
