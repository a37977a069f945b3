import { describe, expect, it } from 'vitest'
import { pressureForLoad } from '../../shared-logic/tyres/pressure-for-load'
import { tyreCapacityOf } from '../../shared-logic/tyres/tyre-capacity'
import { pounds } from '../../shared-logic/units/us-customary'

const psi = (pascal: number): number => pascal / 6894.757293

describe('pressure for a load (published ST tyre load and pressure table)', () => {
  const tyre = { size: 'ST205/75R15', loadRange: 'D' } as const
  it.each([[1, 35, 1480], [1480, 35, 1480], [1481, 50, 1820], [1820, 50, 1820], [1821, 65, 2150], [2150, 65, 2150]])('%i lb on an ST205/75R15 range D: %i psi, where it carries %i lb', (load, pressure, carries) => {
    const found = pressureForLoad(tyre, pounds(load))
    expect(found).toMatchObject({ kind: 'found' })
    expect(found.kind === 'found' && psi(found.pressurePa)).toBeCloseTo(pressure, 3)
    expect(found.kind === 'found' && found.carriesKg / pounds(1)).toBeCloseTo(carries, 6)
  })
  it('2,151 lb is beyond range D, and 1,821 lb beyond range C, whatever the table says of the ranges above', () => {
    expect(pressureForLoad(tyre, pounds(2151)).kind).toBe('beyond')
    expect(pressureForLoad({ ...tyre, loadRange: 'C' }, pounds(1821)).kind).toBe('beyond')
  })
  it('range C at 50 psi carries 1,820 lb; two of them 3,640, two of range B 2,960 at 35 psi', () => {
    expect((tyreCapacityOf({ size: 'ST205/75-15', loadRange: 'C' }, 'us')?.massKg ?? 0) / pounds(1)).toBeCloseTo(1820, 6)
    expect((2 * (tyreCapacityOf({ size: 'ST205/75-15', loadRange: 'B' }, 'us')?.massKg ?? 0)) / pounds(1)).toBeCloseTo(2960, 6)
  })
  it.each([
    [{}, 'no size', 'trailer.tyre.size'], [{ size: 'ST205/75R15' }, 'no load range', 'trailer.tyre.loadRange'], [{ size: '195/70R14C', loadRange: 'C' as const }, 'no table', 'trailer.tyre.size'],
  ])('nothing is told of %j: %s', (unknown, why, field) => expect(pressureForLoad(unknown, 400)).toEqual({ kind: 'not told', why, field }))
})

describe('what one tyre carries', () => {
  it('the load index goes before size and range (published load index tables)', () => expect(tyreCapacityOf({ loadIndex: 101, size: 'ST205/75R15', loadRange: 'B' }, 'us')?.massKg).toBe(825))
  it('a passenger-car tyre counts for its rating divided by 1.10 in the United States (49 CFR 571.120 S5.1.2, letter of 17 November 1976)', () => {
    expect(tyreCapacityOf({ size: 'P205/75R15', loadIndex: 97 }, 'us')?.massKg).toBeCloseTo(730 / 1.1, 9)
    expect(tyreCapacityOf({ size: 'P205/75R15', loadIndex: 97 }, 'eu')?.massKg).toBe(730)
  })
  it('stays unknown without either', () => expect(tyreCapacityOf({ size: '195/70R14C' }, 'us')).toBeUndefined())
})
