import { describe, expect, it } from 'vitest'
import { loadOfIndexKg, passengerTyreOnTrailerKg, tyresCarryKg } from '../../shared-logic/rules/tyre-load-index'
import { speedOfSymbolKmPerHour, unmarkedTrailerTyreKmPerHour } from '../../shared-logic/rules/speed-symbols'
import { rangePressurePa, trailerTyreLoadKg } from '../../shared-logic/rules/us-tyre-loads'

const poundKg = 0.45359237
const psiPa = 6894.757

/** Kilograms from index 50 on. Source: published load index tables, two independent ones. */
const publishedKg: readonly (readonly [number, number])[] = [
  [50, 190], [51, 195], [52, 200], [53, 206], [54, 212], [55, 218], [56, 224], [57, 230], [58, 236], [59, 243],
  [60, 250], [61, 257], [62, 265], [63, 272], [64, 280], [65, 290], [66, 300], [67, 307], [68, 315], [69, 325],
  [70, 335], [71, 345], [72, 355], [73, 365], [74, 375], [75, 387], [76, 400], [77, 412], [78, 425], [79, 437],
  [80, 450], [81, 462], [82, 475], [83, 487], [84, 500], [85, 515], [86, 530], [87, 545], [88, 560], [89, 580],
  [90, 600], [91, 615], [92, 630], [93, 650], [94, 670], [95, 690], [96, 710], [97, 730], [98, 750], [99, 775],
  [100, 800], [101, 825], [102, 850], [103, 875], [104, 900], [105, 925], [106, 950], [107, 975], [108, 1000], [109, 1030],
  [110, 1060], [111, 1090], [112, 1120], [113, 1150], [114, 1180], [115, 1215], [116, 1250], [117, 1285], [118, 1320], [119, 1360],
  [120, 1400], [121, 1450], [122, 1500], [123, 1550], [124, 1600], [125, 1650], [126, 1700], [127, 1750], [128, 1800], [129, 1850],
  [130, 1900],
]

describe('load index (published load index tables)', () => {
  it('covers every index from 50 to 130', () => {
    expect(publishedKg.map(([index]) => index)).toEqual(Array.from({ length: 81 }, (_, index) => 50 + index))
  })
  it.each(publishedKg)('index %i carries %i kg', (index, kg) => expect(loadOfIndexKg(index)).toBe(kg))
  it('rises with every step', () => {
    const loads = publishedKg.map(([index]) => index).map((index) => loadOfIndexKg(index) ?? 0)
    expect(loads.every((load, index) => index === 0 || load > (loads[index - 1] ?? 0))).toBe(true)
  })
  it('knows nothing outside 50 to 130', () => {
    expect(loadOfIndexKg(49)).toBeUndefined()
    expect(loadOfIndexKg(131)).toBeUndefined()
  })
  it('index 53 is the 454 lb of the pound table, not the misprinted 205 kg', () => expect(Math.round((loadOfIndexKg(53) ?? 0) / poundKg)).toBe(454))
  it('index 66 is 661 lb, not the misprinted 639', () => expect(Math.round((loadOfIndexKg(66) ?? 0) / poundKg)).toBe(661))
  it.each([[62, 165], [83, 478], [110, 1000]])('index %i is not the misprinted %i kg', (index, misprint) => expect(loadOfIndexKg(index)).not.toBe(misprint))
})

describe('what the tyres carry', () => {
  it('two tyres of index 98 carry 1500 kg, 11.1 % over an axle of 1350 kg', () => {
    expect(tyresCarryKg(98, 2)).toBe(1500)
    expect((tyresCarryKg(98, 2) ?? 0) / 1350 - 1).toBeCloseTo(0.111, 3)
  })
  it('two tyres of index 96 carry 1420 kg, short of an axle of 1500 kg', () => expect(tyresCarryKg(96, 2)).toBe(1420))
  it('four tyres 96/94 on a tandem are single fitting: 2840 kg, not 2680', () => expect(tyresCarryKg(96, 4)).toBe(2840))
  it('a passenger-car tyre of 1,820 lb counts 1,654.5 lb on a trailer (49 CFR 571.120 S5.1.2, agency letter of 17 November 1976)', () => {
    expect(passengerTyreOnTrailerKg(1820 * poundKg) / poundKg).toBeCloseTo(1654.5, 1)
    expect((2 * passengerTyreOnTrailerKg(1820 * poundKg)) / poundKg).toBeCloseTo(3309, 0)
  })
})

describe('speed symbols (published table)', () => {
  it.each([
    ['E', 70], ['F', 80], ['G', 90], ['J', 100], ['K', 110], ['L', 120], ['M', 130], ['N', 140], ['P', 150], ['Q', 160], ['R', 170], ['S', 180],
    ['T', 190], ['U', 200], ['H', 210], ['V', 240], ['W', 270], ['Y', 300],
  ] as const)('%s is %i km/h', (symbol, speed) => expect(speedOfSymbolKmPerHour(symbol)).toBe(speed))
  it.each([['B', 50], ['C', 60], ['D', 65]] as const)('%s is %i km/h (from memory)', (symbol, speed) => expect(speedOfSymbolKmPerHour(symbol)).toBe(speed))
  it('an ST tyre without a symbol: 65 mph, 104 km/h (published ST tyre guidance)', () => expect(unmarkedTrailerTyreKmPerHour).toBe(Math.floor(65 * 1.609344)))
  it('I, O and X are none', () => expect(['I', 'O', 'X'].map(speedOfSymbolKmPerHour)).toEqual([undefined, undefined, undefined]))
})

describe('ST tyres (published load and pressure table)', () => {
  it.each([
    ['ST175/80-13', 'B', 1100], ['ST175/80-13', 'C', 1360], ['ST185/80-13', 'B', 1200], ['ST185/80-13', 'C', 1480],
    ['ST205/75-15', 'B', 1480], ['ST205/75-15', 'C', 1820], ['ST205/75-15', 'D', 2150],
    ['ST225/75-15', 'B', 1760], ['ST225/75-15', 'C', 2150], ['ST225/75-15', 'D', 2540], ['ST225/75-15', 'E', 2840],
    ['ST235/80-16', 'B', 2090], ['ST235/80-16', 'C', 2600], ['ST235/80-16', 'D', 3000], ['ST235/80-16', 'E', 3420],
  ] as const)('%s range %s carries %i lb', (size, range, pounds) => expect((trailerTyreLoadKg(size, range) ?? 0) / poundKg).toBeCloseTo(pounds, 6))
  it.each(['ST205/75R15', 'st 205/75 D15', 'ST205/75-15'])('%s is the same row', (size) => expect(trailerTyreLoadKg(size, 'C')).toBeCloseTo(1820 * poundKg, 6))
  it('a size or range the table lacks stays unknown', () => {
    expect(trailerTyreLoadKg('ST205/75-15', 'E')).toBeUndefined()
    expect(trailerTyreLoadKg('195/70R14C', 'C')).toBeUndefined()
  })
  it.each([['B', 35], ['C', 50], ['D', 65], ['E', 80]] as const)('range %s: %i psi', (range, psi) => expect(rangePressurePa(range) / psiPa).toBeCloseTo(psi, 3))
  it('range F: 95 psi (from memory)', () => expect(rangePressurePa('F') / psiPa).toBeCloseTo(95, 3))
})
