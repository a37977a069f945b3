import { describe, expect, it } from 'vitest'
import { readTyreDateCode, type TyreDateCode } from '../../shared-logic/identity/tyre-date-code'
import { madeOn, tyreAgeYears } from '../../shared-logic/rules/tyre-age'

const read = (written: string): TyreDateCode => {
  const code = readTyreDateCode(written)
  if (!code) throw new Error(`${written} is no date code`)
  return code
}

describe('tyre date code (49 CFR 574.5; published decodings)', () => {
  it.each([['2319', 23, 2019], ['2501', 25, 2001], ['3623', 36, 2023], ['5012', 50, 2012]] as const)('%s is week %i of %i', (written, week, year) => {
    expect(read(written)).toEqual({ week, year, decadeCoded: true, weekInYear: true })
  })
  it('317 is week 31 of 1997, its decade not coded', () => expect(read('317')).toEqual({ week: 31, year: 1997, decadeCoded: false, weekInYear: true }))
  it.each(['0018', '5418', '0007', '5419'])('%s is invalid: weeks run from 01 to 53', (written) => expect(readTyreDateCode(written)).toBeUndefined())
  it.each(['', '23', '23199', 'AB19', '23I9', '2019-06-03', '-319', '2.19'])('“%s” is no date code', (written) => expect(readTyreDateCode(written)).toBeUndefined())
  it.each(['DOT 4B9R 1YA 2319', 'DOT2319', '(2319)', ' 2319 '])('“%s” holds 2319', (written) => expect(read(written)).toMatchObject({ week: 23, year: 2019 }))
  it.each([['5320', true], ['5315', true], ['5319', false], ['5323', false], ['5219', true]] as const)('%s: that year has the week: %s (ISO 8601 weeks)', (written, inYear) => {
    expect(read(written).weekInYear).toBe(inYear)
  })
})

describe('tyre age (ISO week Monday; one week either way is normal)', () => {
  it.each([['2319', '2019-06-03'], ['0124', '2024-01-01'], ['5320', '2020-12-28'], ['0121', '2021-01-04'], ['0115', '2014-12-29']] as const)(
    '%s begins on %s', (written, date) => expect(madeOn(read(written))).toBe(date),
  )
  it('2319 is 6.00 years old on 1 June 2025, not yet over 6 (limit: common practice, no source)', () => {
    const years = tyreAgeYears(read('2319'), '2025-06-01')
    expect(years).toBeCloseTo(5.996, 3)
    expect(years).toBeLessThan(6)
  })
  it('5012 is 12.47 years old on 1 June 2025 (limit of 10: common practice, no source)', () => expect(tyreAgeYears(read('5012'), '2025-06-01')).toBeCloseTo(12.47, 2))
})
