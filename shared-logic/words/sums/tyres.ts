import { assertNever } from '../../assert-never'
import { measured, type UnitSystem } from '../../units/quantity'
import type { TyreLoad, TyreSums } from '../../tyres/tyre-sums'
import { saySource } from '../check-sentences'
import type { Words } from '../en'
import { say } from '../say'
import { sayWaits, type SumsLine, type SumsSection } from './section'

const mass = (massKg: number) => measured('mass', massKg)

const sayPressure = (words: Words, { pressure }: TyreLoad, units: UnitSystem): string => {
  const said = words.sums.tyres
  switch (pressure.kind) {
    case 'found':
      return say(said.pressure, { pressure: measured('pressure', pressure.pressurePa), carries: mass(pressure.carriesKg) }, units)
    case 'beyond':
      return say(said.beyond, { carries: mass(pressure.carriesKg) }, units)
    case 'not told':
      return said.notTold[pressure.why]
    default:
      return assertNever(pressure)
  }
}

const sayTyre = (words: Words, tyre: TyreLoad, units: UnitSystem): SumsLine => {
  const said = words.sums.tyres
  const { line } = tyre
  const { verdict } = line
  const gaps = { place: say(said.place[tyre.side], { axle: tyre.axle }, units), load: mass(tyre.loadKg), from: said.from[tyre.from] }
  if (line.reserveKg === undefined) return { text: say(said.noCapacity, gaps, units), verdict }
  const text = line.standing === 'over'
    ? say(said.overload, { ...gaps, excess: mass(-line.reserveKg) }, units)
    : say(said.load, { ...gaps, reserve: mass(line.reserveKg), standing: words.sums.standings[line.standing] }, units)
  return { text: `${text}; ${sayPressure(words, tyre, units)}`, verdict }
}

export const sayTyres = (words: Words, { capacity, placardPressurePa, speedKmPerHour, loads, waitsFor }: TyreSums, units: UnitSystem): SumsSection => {
  const said = words.sums.tyres
  const reduced = capacity?.reducedFromKg
  return {
    id: 'tyres', title: words.sums.parts.tyres, formula: said.formula, sources: capacity ? [saySource(capacity.source)] : [], cautions: [],
    lines: [
      ...(capacity ? [{ text: reduced === undefined ? say(said.capacity, { capacity: mass(capacity.massKg) }, units) : say(said.reduced, { capacity: mass(capacity.massKg), from: mass(reduced) }, units) }] : []),
      ...(speedKmPerHour === undefined ? [] : [{ text: say(said.speed, { speed: speedKmPerHour, milesPerHour: Math.floor(speedKmPerHour / 1.609344) }, units) }]),
      ...loads.map((tyre) => sayTyre(words, tyre, units)),
      ...(placardPressurePa === undefined ? [] : [{ text: say(said.placard, { pressure: measured('pressure', placardPressurePa) }, units) }]),
      ...sayWaits(words, waitsFor, units),
    ],
  }
}
