import { describe, expect, it } from 'vitest'
import { checkIdentificationNumber, modelYearsOf } from '../../shared-logic/identity/vin'
import { judged } from '../shared-logic/checks/judged'

describe('vehicle identification numbers, 49 CFR 565.15', () => {
  it.each([
    ['1G4AH59H45G118341', 'worked example of Table V of the rule'],
    ['1M8GDM9AXKP042788', 'reproduced worked example'],
    ['1J9RP1A36A1644345', 'agency trailer example'],
    ['5GZCZ43D13S812715', 'public test data'],
    ['1HGCM82633A004352', 'public test data'],
    ['JHMCM56557C404453', 'from memory for its publication, sum computed'],
    ['1A9BT2027M1123456', 'synthetic, computed from the rule'],
    ['5B9ST182XR1000042', 'synthetic, computed from the rule'],
    ['1ZZAA2225K1000001', 'synthetic, computed from the rule'],
  ])('%s is valid (%s)', (number) => {
    expect(checkIdentificationNumber(number)).toEqual({ kind: 'valid', allSame: false })
  })

  it('11111111111111111 adds up, and is known as seventeen equal characters (public test data)', () => {
    expect(checkIdentificationNumber('11111111111111111')).toEqual({ kind: 'valid', allSame: true })
  })

  it.each([
    ['1M8GDM9A1KP042788', 'X', '1'],
    ['SGZCZ43D13S812715', 'X', '1'],
    ['5GZCZ43D23S812715', '1', '2'],
    ['1J9RP1A3XA1644345', '6', 'X'],
    ['KLATF08Y1VB363636', '4', '1'],
    ['WP0ZZZ99ZTS392124', '8', 'Z'],
  ])('%s should have the check digit %s, not %s', (number, expected, found) => {
    expect(checkIdentificationNumber(number)).toEqual({ kind: 'bad digit', expected, found })
  })

  it('WP0ZZZ99ZTS392124 of a European trailer is information, not a fault: no check digit is asked outside North America (vehicle identification structure pages)', () => {
    expect(judged('papers.identification-number', { read: 'as registered' }, { trailer: { identificationNumber: 'WP0ZZZ99ZTS392124', market: 'europe' } })).toMatchObject({ outcome: 'no check digit there', verdict: 'pass' })
  })

  it('11111111111111111 is warned of all the same', () => {
    expect(judged('papers.identification-number', { read: 'another', number: '11111111111111111' }).verdict).toBe('advisory')
  })

  it('the letter O is never used: 1G4AH59H45G11834O', () => {
    expect(checkIdentificationNumber('1G4AH59H45G11834O')).toEqual({ kind: 'bad character', character: 'O', place: 17 })
  })

  it.each(['I', 'Q', 'Ä', '*'])('%s is not a character of a number', (character) => {
    expect(checkIdentificationNumber(`1G4AH59H45G11834${character}`)).toMatchObject({ kind: 'bad character', character })
  })

  it('sixteen characters are too few: 1G4AH59H45G11834', () => {
    expect(checkIdentificationNumber('1G4AH59H45G11834')).toEqual({ kind: 'not 17', length: 16 })
  })

  it('spaces, hyphens and small letters are read as stamped', () => {
    expect(checkIdentificationNumber(' 1g4-ah59h 45g118341 ')).toEqual({ kind: 'valid', allSame: false })
  })

  it('any single digit changed is noticed, but for the check place itself read wrong (565.15: modulo 11 over weights)', () => {
    const number = '1HGCM82633A004352'
    const misread = number.split('').flatMap((character, place) => (/\d/.test(character) && place !== 8 ? [number.slice(0, place) + String((Number(character) + 1) % 10) + number.slice(place + 1)] : []))
    expect(misread.length).toBeGreaterThan(8)
    expect(misread.map((each) => checkIdentificationNumber(each).kind)).toEqual(misread.map(() => 'bad digit'))
  })

  it.each([
    ['1M8GDM9AXKP042788', [1989, 2019]],
    ['1HGCM82633A004352', [2003, 2033]],
    ['1J9RP1A36A1644345', [1980, 2010]],
    ['1A9BT2027M1123456', [1991, 2021]],
    ['WP0ZZZ99ZTS392124', [1996, 2026]],
    ['1G4AH59H40G118341', []],
  ])('the tenth character of %s stands for %j (from memory: Table VII, thirty-year cycle)', (number, years) => {
    expect(modelYearsOf(number)).toEqual(years)
  })
})
