import type { Photograph } from '../survey/records'
import type { Words } from './en'
import { say, sayDate } from './say'

/** A camera's time as people read it: '2026:11:24 10:05:00+02:00' as '24 November 2026, 10:05 +02:00'. What is not understood stays as it stands. */
export const sayCameraTime = (written: string): string => {
  const match = /^(\d{4})[-:](\d{2})[-:](\d{2})[T ](\d{2}:\d{2})(?::\d{2}(?:\.\d+)?)?\s*(Z|[+-]\d{2}:?\d{2})?$/.exec(written.trim())
  if (match === null || Number(match[2]) < 1 || Number(match[2]) > 12) return written.trim()
  const offset = match[5] === undefined ? '' : ` ${match[5] === 'Z' ? 'UTC' : match[5]}`
  return `${sayDate(`${match[1]}-${match[2]}-${match[3]}`)}, ${match[4]}${offset}`
}

/** 38.7071, -9.1355 as '38.70710° N, 9.13550° W': to about a metre, as cameras write it. */
export const sayCameraPlace = ({ report }: Pick<Words, 'report'>, { latitude, longitude }: Pick<Photograph, 'latitude' | 'longitude'>): string | undefined => {
  if (latitude === undefined || longitude === undefined) return undefined
  const { place, north, south, east, west } = report.placeFromTheCamera
  return say(place, { latitude: Math.abs(latitude).toFixed(5), northOrSouth: latitude < 0 ? south : north, longitude: Math.abs(longitude).toFixed(5), eastOrWest: longitude < 0 ? west : east }, 'metric')
}
