import { assertNever } from '../../assert-never'
import { checkHullNumber, type HullNumberCheck } from '../../identity/hin'
import { asStamped, checkIdentificationNumber, modelYearsOf } from '../../identity/vin'
import type { Trailer } from '../../rig/trailer'
import { commonPractice, fromMemory, law, roadworthiness } from '../../rules/cite'
import type { FieldValues } from '../../survey/answer'
import { carriesBoat } from '../applies'
import { advisory, failed, passed, textOf, unseen } from '../builders'
import type { Check, Field, Found } from '../check'

/** The number as the rig has it, or another one as read at the plate. */
const numberFields: readonly Field[] = [
  { kind: 'choice', id: 'read', options: ['as registered', 'another', 'none found'] },
  { kind: 'text', id: 'number', maxLength: 40, when: { field: 'read', oneOf: ['another'] } },
]

/** The number to check, or how the check comes out without one; undefined while it is still to be typed. */
const numberRead = (values: FieldValues, registered: string | undefined): { readonly number: string } | { readonly outcome: string } | undefined => {
  const read = textOf(values, 'read')
  if (read === undefined) return undefined
  if (read === 'none found') return { outcome: 'none found' }
  const number = read === 'another' ? textOf(values, 'number') : registered
  if (number !== undefined) return { number }
  return read === 'another' ? undefined : { outcome: 'not entered' }
}

const judgeRead = (values: FieldValues, registered: string | undefined, judge: (number: string) => Found): Found | undefined => {
  const read = numberRead(values, registered)
  return read === undefined || 'outcome' in read ? read : judge(read.number)
}

/** Seventeen characters are asked since model year 1981; before, numbers were the maker's own. */
const seventeenSince = 1981
/** A model year and a year of building within one of each other agree. */
const agrees = (years: readonly number[], built: number | undefined): boolean => built === undefined || years.length === 0 || years.some((year) => Math.abs(year - built) <= 1)

const judgeDigit = (trailer: Trailer, number: string, expected: string, found: string): Found => {
  const values = { number: asStamped(number), expected, found }
  if (trailer.market === 'north america') return { outcome: 'bad digit', values }
  return { outcome: trailer.market === undefined ? 'bad digit, market unknown' : 'no check digit there', values }
}

const judgeModelYear = (number: string, builtYear: number | undefined): Found => {
  const years = modelYearsOf(number)
  const values = { number: asStamped(number), first: years[0] ?? '', second: years[1] ?? '', built: builtYear ?? '' }
  return { outcome: agrees(years, builtYear) ? 'valid' : 'year differs', values }
}

const judgeIdentification = (number: string, trailer: Trailer): Found => {
  const check = checkIdentificationNumber(number)
  const stamped = asStamped(number)
  switch (check.kind) {
    case 'not 17':
      return { outcome: (trailer.builtYear ?? seventeenSince) < seventeenSince ? 'before 1981' : 'not 17', values: { number: stamped, length: check.length } }
    case 'bad character':
      return { outcome: 'bad character', values: { number: stamped, character: check.character, place: check.place } }
    case 'bad digit':
      return judgeDigit(trailer, number, check.expected, check.found)
    case 'valid':
      if (check.allSame) return { outcome: 'all the same', values: { number: stamped } }
      return judgeModelYear(number, trailer.builtYear)
    default:
      return assertNever(check)
  }
}

const judgeDecoded = (check: Extract<HullNumberCheck, { kind: 'valid' }>, builtYear: number | undefined): Found => {
  const values = { maker: check.maker, serial: check.serial, month: check.month, year: check.year ?? check.modelYear, modelYear: check.modelYear, built: builtYear ?? '' }
  if (!agrees([check.modelYear], builtYear)) return { outcome: 'year differs', values }
  return { outcome: check.form === 'current' ? 'valid' : 'older form', values }
}

const judgeHull = (number: string, builtYear: number | undefined): Found => {
  const check = checkHullNumber(number)
  const values = { number: asStamped(number) }
  switch (check.kind) {
    case 'valid':
      return judgeDecoded(check, builtYear)
    case 'international':
      return { outcome: 'international', values: { ...values, country: check.country } }
    case 'bad length':
      return { outcome: 'bad length', values: { ...values, length: check.length } }
    case 'bad serial':
      return { outcome: 'bad serial', values: { ...values, character: check.character } }
    case 'bad month':
      return { outcome: 'bad month', values: { ...values, character: check.character } }
    case 'bad maker':
    case 'bad year':
      return { outcome: check.kind, values }
    default:
      return assertNever(check)
  }
}

export const paperNumberChecks: readonly Check[] = [
  {
    id: 'papers.identification-number',
    station: 'papers',
    positions: 'once',
    drawing: 'plate',
    photograph: true,
    fields: numberFields,
    outcomes: {
      valid: passed,
      'no check digit there': passed,
      'before 1981': passed,
      'year differs': advisory('before next trip'),
      'all the same': advisory('before next trip'),
      'bad digit': advisory('before next trip'),
      'bad digit, market unknown': advisory('before next trip'),
      'bad character': advisory('before next trip'),
      'not 17': advisory('before next trip'),
      'none found': failed('before next trip'),
      'not entered': unseen,
    },
    judge: (values, { rig }) => judgeRead(values, rig.trailer.identificationNumber, (number) => judgeIdentification(number, rig.trailer)),
    sources: [
      law('us', '49 CFR 565.15', 'Tables III to V, check digit'),
      roadworthiness('0.2, identification number missing'),
      fromMemory('49 CFR 565.15 Table VII, model year letters'),
    ],
  },
  {
    id: 'papers.hull-number',
    station: 'papers',
    positions: 'once',
    applies: carriesBoat,
    photograph: true,
    fields: numberFields,
    outcomes: {
      valid: passed,
      'older form': passed,
      international: passed,
      'year differs': advisory('before next trip'),
      'bad length': advisory('before next trip'),
      'bad maker': advisory('before next trip'),
      'bad serial': advisory('before next trip'),
      'bad month': advisory('before next trip'),
      'bad year': advisory('before next trip'),
      'none found': advisory('before next trip'),
      'not entered': unseen,
    },
    judge: (values, { rig }) => judgeRead(values, rig.boat?.hullIdentificationNumber, (number) => judgeHull(number, rig.boat?.builtYear)),
    sources: {
      us: [law('us', '33 CFR 181.25', 'hull identification number format')],
      eu: [fromMemory('ISO 10087, fourteen characters with the country first'), law('us', '33 CFR 181.25', 'for boats built for the United States'), commonPractice],
    },
  },
]
