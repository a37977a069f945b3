import { describe, expect, it } from 'vitest'
import { checkHullNumber, type HullNumberCheck } from '../../shared-logic/identity/hin'

describe('hull identification numbers, 33 CFR 181.25', () => {
  it.each([
    ['ABC12345D404', 'ABC', 4, 2004, 2004, 'rule looked up, computed'],
    ['XYZ12345C585', 'XYZ', 3, 1985, 1985, 'published ending'],
    ['XYZ12345K485', 'XYZ', 11, 1984, 1985, 'published ending'],
    ['ABC12345A900', 'ABC', 1, 1999, 2000, 'nearest year across the century, computed'],
    ['ABC12345L110', 'ABC', 12, 2011, 2010, 'certified after the model year, computed'],
  ])('%s: maker %s, month %i of %i, model year %i (%s)', (number, maker, month, year, modelYear) => {
    expect(checkHullNumber(number)).toMatchObject({ kind: 'valid', form: 'current', maker, serial: '12345', month, year, modelYear })
  })

  it('XYZ12345M82H is the older form: model year 1982, month H is March, A being August (published notes)', () => {
    expect(checkHullNumber('XYZ12345M82H')).toMatchObject({ kind: 'valid', form: 'older', modelYear: 1982, month: 3 })
    expect(checkHullNumber('XYZ12345M82A')).toMatchObject({ kind: 'valid', form: 'older', modelYear: 1982, month: 8 })
    expect(checkHullNumber('XYZ12345M82L')).toMatchObject({ kind: 'valid', form: 'older', modelYear: 1982, month: 7 })
  })

  it('the prefix US- is not part of the number (published notes)', () => {
    expect(checkHullNumber('US-ABC12345D404')).toMatchObject({ kind: 'valid', maker: 'ABC', modelYear: 2004 })
  })

  it.each<[string, HullNumberCheck, string]>([
    ['ABC1234ID404', { kind: 'bad serial', character: 'I' }, '181.25(b): no I in the serial'],
    ['ABC12O45D404', { kind: 'bad serial', character: 'O' }, '181.25(b): no O in the serial'],
    ['ABC12345N404', { kind: 'bad month', character: 'N' }, '181.25(c): months A to L'],
    ['ABC12345M404', { kind: 'bad month', character: 'M' }, 'M is no month, and the older form ends in a letter'],
    ['ABC123D404', { kind: 'bad length', length: 10 }, '181.25: twelve characters'],
    ['ABC12345D4X4', { kind: 'bad year' }, '181.25(c), (d): digits of the years'],
    ['A1C12345D404', { kind: 'bad maker' }, '181.25(a): code of the maker'],
  ])('%s is refused: %j (%s)', (number, expected) => {
    expect(checkHullNumber(number)).toEqual(expected)
  })

  it('fourteen characters with a country first are the international form (ISO 10087, from memory)', () => {
    expect(checkHullNumber('FR-XYZ12345D404')).toEqual({ kind: 'international', country: 'FR' })
  })
})
