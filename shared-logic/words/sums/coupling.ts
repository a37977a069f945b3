import type { CouplingSums, MarkedValue } from '../../coupling/coupling-sums'
import { measured, type UnitSystem } from '../../units/quantity'
import type { Words } from '../en'
import { say } from '../say'
import { sayWaits, type SumsLine, type SumsSection } from './section'

const force = (newtons: number) => measured('force', newtons)
const verdicts = { enough: 'pass', 'too small': 'fail', waits: 'not seen' } as const

const sayMarked = (words: Words, template: string, { neededN, markedN, standing }: MarkedValue, units: UnitSystem): SumsLine[] => {
  const said = words.sums.coupling
  if (neededN === undefined) return []
  if (markedN === undefined) return [{ text: say(said.dNeeded, { needed: force(neededN) }, units), verdict: 'not seen' }]
  return [{ text: say(template, { needed: force(neededN), marked: force(markedN), standing: said.standings[standing] }, units), verdict: verdicts[standing] }]
}

const sayClass = (words: Words, { couplerClass }: CouplingSums, units: UnitSystem): SumsLine[] => {
  const said = words.sums.coupling
  if (couplerClass.needed === undefined) return couplerClass.waitsFor.includes('trailer.maximumMassKg') ? [] : [{ text: said.classEnds, verdict: 'not seen' }]
  return [
    { text: say(said.class, { class: couplerClass.needed.replace('class ', ''), standing: said.standings[couplerClass.standing] }, units), verdict: verdicts[couplerClass.standing] },
    ...(couplerClass.leastBallM === undefined ? [] : [{ text: say(said.leastBall, { ball: measured('smallLength', couplerClass.leastBallM) }, units) }]),
  ]
}

/** The strict reading alone is an advisory; the federal benchmark not held is a fail. */
const sayChains = (words: Words, { chains }: CouplingSums, units: UnitSystem): SumsLine[] => {
  const said = words.sums.coupling
  const { need, standing } = chains
  return [
    ...(need ? [{ text: say(said.chainsNeed, { each: force(need.eachN), together: force(need.togetherN) }, units) }] : []),
    ...(standing
      ? [
          { text: said.chainsEach[standing.eachEnough ? 'yes' : 'no'], verdict: standing.eachEnough ? ('pass' as const) : ('advisory' as const) },
          { text: said.chainsTogether[standing.togetherEnough ? 'yes' : 'no'], verdict: standing.togetherEnough ? ('pass' as const) : ('fail' as const) },
        ]
      : []),
  ]
}

export const sayCoupling = (words: Words, sums: CouplingSums, units: UnitSystem): SumsSection => {
  const said = words.sums.coupling
  const { dValue, dcValueN, vValue } = sums
  return {
    id: 'coupling', title: words.sums.parts.coupling, formula: said.formula, sources: [said.source], cautions: [],
    lines: [
      ...sayMarked(words, said.d, dValue, units),
      ...(dValue.heaviestTrailerKg === undefined ? [] : [{ text: say(said.heaviest, { mass: measured('mass', dValue.heaviestTrailerKg) }, units) }]),
      ...(dcValueN === undefined ? [] : [{ text: say(said.dc, { needed: force(dcValueN) }, units) }]),
      ...(vValue ? sayMarked(words, said.v, vValue, units) : []),
      ...sayClass(words, sums, units), ...sayChains(words, sums, units),
      ...sayWaits(words, [...dValue.waitsFor, ...sums.couplerClass.waitsFor, ...sums.chains.waitsFor], units),
    ],
  }
}
