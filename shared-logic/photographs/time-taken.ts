import type { Photograph } from '../survey/records'
import { wallClock } from '../survey/wall-clock'

/** When a photograph was taken, and by whose clock. */
export interface TimeTaken {
  /** ISO, as that clock showed it: '2026-11-24T10:05:00', with the camera's offset where it wrote one. */
  readonly at: string
  readonly by: 'camera' | 'program'
}

/**
 * By the file, as its camera wrote it. A picture this program took itself came in the moment it was taken: where its file
 * tells no time, that is told, as the clock on the wall showed it where the survey is made. Undefined where nobody knows.
 */
export const timeTaken = ({ takenAt, addedAt, source }: Pick<Photograph, 'takenAt' | 'addedAt' | 'source'>, zone: string): TimeTaken | undefined => {
  if (takenAt !== undefined) return { at: takenAt, by: 'camera' }
  if (source !== 'camera') return undefined
  const { date, time } = wallClock(addedAt, zone)
  return { at: `${date}T${time}`, by: 'program' }
}
