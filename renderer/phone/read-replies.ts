import type { ArrivedReply, ChecksReply, PairReply, PhotographReply } from './door'

/**
 * Readers of the door's replies. Written by hand, for the schemas of `phone-door.ts` would make the page half as heavy
 * again; the tests hold the two to each other. Each answers undefined for what is not of that form: another page may
 * stand at this address (a network that asks for a sign-in answers everything).
 */
const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> => typeof value === 'object' && value !== null && !Array.isArray(value)

const isListOf = <Each>(value: unknown, isEach: (each: unknown) => each is Each): value is Each[] => Array.isArray(value) && value.every(isEach)

const isText = (value: unknown): value is string => typeof value === 'string'

const isInstant = (value: unknown): value is string => isText(value) && !Number.isNaN(Date.parse(value))

type Station = ChecksReply['stations'][number]

const isCheck = (value: unknown): value is Station['checks'][number] =>
  isRecord(value) && isText(value['checkId']) && isText(value['position']) && isText(value['title']) && isText(value['place']) && typeof value['isOpen'] === 'boolean'

const isStation = (value: unknown): value is Station => isRecord(value) && isText(value['title']) && isListOf(value['checks'], isCheck)

export const readPair = (value: unknown): PairReply | undefined => {
  if (!isRecord(value)) return undefined
  const { closesAt, connectionId } = value
  return isInstant(closesAt) && isText(connectionId) ? { closesAt, connectionId } : undefined
}

export const readChecks = (value: unknown): ChecksReply | undefined => {
  if (!isRecord(value)) return undefined
  const { closesAt, connectionId, stations } = value
  return isInstant(closesAt) && isText(connectionId) && isListOf(stations, isStation) ? { closesAt, connectionId, stations } : undefined
}

const isPhotograph = (value: unknown): value is PhotographReply =>
  isRecord(value) && isText(value['pictureId']) && typeof value['alreadyThere'] === 'boolean' && isListOf(value['warnings'], isText)

export const readPhotograph = (value: unknown): PhotographReply | undefined => {
  if (!isPhotograph(value)) return undefined
  const { pictureId, alreadyThere, warnings } = value
  return { pictureId, alreadyThere, warnings }
}

export const readArrived = (value: unknown): ArrivedReply | undefined => {
  if (!isRecord(value)) return undefined
  const { pictureIds, told } = value
  return isListOf(pictureIds, isText) && isListOf(told, isPhotograph) ? { pictureIds, told } : undefined
}

export const readRefusal = (value: unknown): { readonly code: string; readonly sentence: string } | undefined => {
  if (!isRecord(value) || !isRecord(value['refusal'])) return undefined
  const { sentence, refusal: { code } } = value
  return isText(code) && isText(sentence) ? { code, sentence } : undefined
}
