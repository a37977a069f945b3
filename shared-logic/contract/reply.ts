import { z } from 'zod'
import { refusalSchema } from './refusal'

/** What a door answers: the procedure's output, or why it was refused. Over HTTP and IPC alike. */
export const replySchema = z.discriminatedUnion('ok', [
  z.object({ ok: z.literal(true), value: z.unknown() }),
  z.object({ ok: z.literal(false), refusal: refusalSchema }),
])
export type Reply = z.infer<typeof replySchema>

/** HTTP: POST `api/<procedure>`, JSON body; where the procedure carries bytes the body is the file and this header holds the input. */
export { inputHeader } from './input-header'
/** Electron: the one channel, called with (procedure name, input, bytes?). */
export const deskChannel = 'desk'
