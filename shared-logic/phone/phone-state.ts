import { z } from 'zod'
import { idSchema, instantSchema } from '../survey/records'

/** One of this machine's addresses on a local network. */
export const networkAddressSchema = z.object({ name: z.string(), address: z.string() })

/** The door for a phone, as the window sees it. */
export const phoneStateSchema = z.object({
  surveyId: idSchema,
  /** What the QR code holds: address and one-time pairing secret (after '#', so that it is sent to nobody). Absent once it has been used. */
  pairingAddress: z.string().optional(),
  /** Without the secret, to read out or compare. */
  address: z.string(),
  isSecure: z.boolean(),
  /** SHA-256 of the certificate made on the spot, in pairs of hex digits, to compare on the phone. */
  certificateFingerprint: z.string().optional(),
  /** Where else the door could stand on this machine. */
  otherAddresses: z.array(networkAddressSchema),
  closesAt: instantSchema,
  phone: z.object({ name: z.string().max(80), pairedAt: instantSchema, lastHeardAt: instantSchema }).optional(),
  /** Photographs that came through this door, each once, oldest first; not what was there before. */
  arrived: z.array(z.object({ photographId: idSchema, at: instantSchema })),
})
export type PhoneState = z.infer<typeof phoneStateSchema>
