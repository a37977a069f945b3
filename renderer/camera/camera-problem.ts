/** Why there is no live picture; each has its sentence in the words of the camera. */
export type CameraProblem = 'denied' | 'none' | 'in use' | 'unplugged' | 'not offered' | 'failed'

/** This window offers no camera at all: its address is not safe, or the browser has none of it. */
export class CameraNotOffered extends Error {}

const byName: Readonly<Record<string, CameraProblem>> = {
  NotAllowedError: 'denied', SecurityError: 'denied', NotFoundError: 'none', NotReadableError: 'in use', AbortError: 'in use',
}

/** What was thrown calls itself; browsers disagree on what it is an instance of. */
export const nameOfError = (error: unknown): string => (typeof error === 'object' && error !== null && 'name' in error ? String(error.name) : '')

/** Names are those of the Media Capture and Streams specification of the W3C, section getUserMedia. */
export const problemOf = (error: unknown): CameraProblem => (error instanceof CameraNotOffered ? 'not offered' : (byName[nameOfError(error)] ?? 'failed'))
