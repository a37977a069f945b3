import type { PhonePhotograph } from '../../shared-logic/phone/phone-door'
import { en } from '../../shared-logic/words/en'
import { sayWarnings } from '../../shared-logic/words/say-photograph'
import { answerCall } from '../desk/answer-call'
import { PhoneRefusal } from './replies'
import type { Room, Taken } from './room'

/** A survey that is over takes no more pictures: its door is as good as closed. */
const over = new Set(['survey.issued', 'survey.not-found'])

const statusOf = (code: string): number => {
  if (over.has(code)) return 410
  return code === 'program.fault' ? 500 : 422
}

/** Hands one picture to the desk, as any door does: parsed by the contract, whole on the disk before it is answered. Throws `PhoneRefusal`. */
const handOver = async ({ desk, surveyId, now, onFault }: Room, { pictureId: _pictureId, connectionId: _connectionId, ...about }: PhonePhotograph, bytes: Uint8Array): Promise<Taken> => {
  const reply = await answerCall(desk, 'photographs.add', { surveyId, ...about, source: 'phone' }, bytes, onFault)
  if (!reply.ok) throw new PhoneRefusal(statusOf(reply.refusal.code), reply.refusal)
  // The contract's own output, from the desk in this process.
  // oxlint-disable-next-line typescript/no-unsafe-type-assertion
  const { photograph, alreadyThere } = reply.value as Awaited<ReturnType<Room['desk']['photographs.add']>>
  return { photographId: photograph.id, alreadyThere, warnings: sayWarnings(en, photograph), atMs: now() }
}

export const takePicture = (room: Room, about: PhonePhotograph, bytes: Uint8Array): Promise<Taken> =>
  room.arrivals.take(about.pictureId, bytes.byteLength, () => handOver(room, about, bytes))
