import { z } from 'zod'
import { refusalSchema } from '../contract/refusal'
import { checkIdSchema, instantSchema, positionSchema } from '../survey/records'

/**
 * What a paired phone may say through its door, and nothing else. Requests are same-origin; pairing sets a cookie.
 *
 * POST /pair        pairRequest                       -> pairReply
 * GET  /checks                                        -> checksReply
 * POST /photographs photographInput in `inputHeader`  -> photographReply (body: the picture's bytes)
 * GET  /arrived                                       -> arrivedReply
 * Refused: an HTTP status of 400 or more with `phoneRefusalSchema`.
 */
export const pairRequestSchema = z.object({ secret: z.string().min(1).max(200), phoneName: z.string().max(80).default('') })
/** Of this door and the phone it let in, and of no other: what waits on the phone goes on where it is the same, and asks the person where it is not. */
const connectionIdSchema = z.string().min(1).max(64)
export const pairReplySchema = z.object({ closesAt: instantSchema, connectionId: connectionIdSchema })

/** Titles of the checks of this survey, in the order of the walk-round: nothing of answers, verdicts, rig or owner. */
export const checksReplySchema = z.object({
  closesAt: instantSchema,
  connectionId: connectionIdSchema,
  stations: z.array(z.object({
    title: z.string(),
    checks: z.array(z.object({ checkId: checkIdSchema, position: positionSchema, title: z.string(), place: z.string(), isOpen: z.boolean() })),
  })),
})
export type PhoneChecks = z.infer<typeof checksReplySchema>

/** The phone's own name for a picture: sent again under the same id it is never kept twice. */
export const pictureIdSchema = z.string().regex(/^[A-Za-z0-9_-]{16,40}$/)
export const phonePhotographSchema = z.object({
  pictureId: pictureIdSchema,
  /** What it was taken for, where the phone says so: another tab may have brought the phone to another survey meanwhile. */
  connectionId: connectionIdSchema.optional(),
  checkId: checkIdSchema.optional(),
  position: positionSchema.optional(),
  fileName: z.string().min(1).max(255),
})
export type PhonePhotograph = z.infer<typeof phonePhotographSchema>
/** `alreadyThere`: the same picture was kept at that check before. Warnings of quality, as sentences for the person who still stands there. */
export const photographReplySchema = z.object({ pictureId: pictureIdSchema, alreadyThere: z.boolean(), warnings: z.array(z.string()) })
/** `told`: of those the replies that say more than that they arrived; the phone may not have heard them. */
export const arrivedReplySchema = z.object({ pictureIds: z.array(pictureIdSchema), told: z.array(photographReplySchema) })
export const phoneRefusalSchema = z.object({ refusal: refusalSchema, sentence: z.string() })
