import exifReader from 'exifreader'

/** What the file itself says of when and where: from the camera, never trusted, absent where absurd. */
export interface CameraFacts {
  /** Local time as the camera wrote it, ISO, with offset where it wrote one. */
  readonly takenAt?: string
  readonly latitude?: number
  readonly longitude?: number
}

const firstYear = 1990
const dayMs = 86_400_000

const textOf = (tag: { readonly value?: unknown } | undefined): string | undefined => {
  const value = Array.isArray(tag?.value) ? tag.value[0] : tag?.value
  return typeof value === 'string' ? value.trim() : undefined
}

/** '2026:05:03 09:15:27' and '+02:00' as '2026-05-03T09:15:27+02:00'; undefined when it is no moment a photograph can be of. */
const sayMoment = (written: string | undefined, offset: string | undefined, now: Date): string | undefined => {
  const parts = /^(\d{4}):(\d\d):(\d\d) (\d\d):(\d\d):(\d\d)$/.exec(written ?? '')
  if (!parts) return undefined
  const local = `${parts[1]}-${parts[2]}-${parts[3]}T${parts[4]}:${parts[5]}:${parts[6]}`
  const instant = new Date(`${local}Z`)
  const exists = !Number.isNaN(instant.getTime()) && instant.toISOString().startsWith(local)
  if (!exists || instant.getUTCFullYear() < firstYear || instant.getTime() > now.getTime() + dayMs) return undefined
  return /^[+-](0\d|1[0-4]):[0-5]\d$/.test(offset ?? '') ? `${local}${offset}` : local
}

/** A place on the earth; exactly 0, 0 is what a receiver writes that has no fix. */
const placeOf = (latitude: number | undefined, longitude: number | undefined): Pick<CameraFacts, 'latitude' | 'longitude'> => {
  if (latitude === undefined || longitude === undefined) return {}
  const onEarth = Number.isFinite(latitude) && Number.isFinite(longitude) && Math.abs(latitude) <= 90 && Math.abs(longitude) <= 180
  return onEarth && (latitude !== 0 || longitude !== 0) ? { latitude, longitude } : {}
}

/** In a JPEG the EXIF comes first, 64 kB at most; what follows need not be read through. Source: CIPA DC-008, 4.5.4. */
const jpegHeadBytes = 262_144
const isJpeg = (bytes: Uint8Array): boolean => bytes[0] === 0xff && bytes[1] === 0xd8

/** Capture time and place out of the file's EXIF. A file without readable EXIF has none; it is never an error. */
export const readCamera = (bytes: Uint8Array, now: Date): CameraFacts => {
  try {
    const { exif, gps } = exifReader.load(Buffer.from(bytes.buffer, bytes.byteOffset, isJpeg(bytes) ? Math.min(jpegHeadBytes, bytes.byteLength) : bytes.byteLength), { expanded: true })
    const takenAt = sayMoment(textOf(exif?.DateTimeOriginal), textOf(exif?.OffsetTimeOriginal), now)
    return { ...(takenAt !== undefined && { takenAt }), ...placeOf(gps?.Latitude, gps?.Longitude) }
  } catch {
    return {}
  }
}
