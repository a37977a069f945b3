import { sayBrakes } from '../../words/sums/brakes'
import { sayCoupling } from '../../words/sums/coupling'
import type { SumsSection } from '../../words/sums/section'
import { sayTyres } from '../../words/sums/tyres'
import type { SumsSheet } from '../sums-document'
import { inputsOf, printed, type InputRow, type SheetContext } from './sheet-context'

const tyreInputs = ({ rig: { trailer }, sums: { tyres } }: SheetContext): InputRow[] => [
  ['trailer.axleCount', 'words', trailer.axleCount], ['trailer.tyre.size', 'words', trailer.tyre?.size], ['trailer.tyre.loadIndex', 'words', trailer.tyre?.loadIndex],
  ['trailer.tyre.loadRange', 'words', trailer.tyre?.loadRange], ['trailer.tyre.speedSymbol', 'words', trailer.tyre?.speedSymbol],
  ['trailer.tyre.placardPressurePa', 'pressure', tyres.placardPressurePa],
]

const couplingInputs = ({ rig: { trailer, couplingRatings: ratings }, words }: SheetContext): InputRow[] => [
  ['trailer.maximumMassKg', 'mass', trailer.maximumMassKg], ['trailer.coupler', 'words', trailer.coupler], ['trailer.ballDiameterM', 'smallLength', trailer.ballDiameterM],
  ['trailer.ballToAxleM', 'length', ratings?.vValueN === undefined ? undefined : trailer.ballToAxleM],
  ['couplingRatings.towVehicleMaximumKg', 'mass', ratings?.towVehicleMaximumKg],
  ['couplingRatings.towVehicleHasAirSuspension', 'words', ratings?.towVehicleHasAirSuspension === undefined ? undefined : words.report[ratings.towVehicleHasAirSuspension ? 'yes' : 'no']],
  ['couplingRatings.dValueN', 'force', ratings?.dValueN], ['couplingRatings.vValueN', 'force', ratings?.vValueN],
  ['couplingRatings.chainBreakingForceN', 'force', ratings?.chainBreakingForceN], ['couplingRatings.chainCount', 'words', ratings?.chainCount],
]

const brakeInputs = ({ rig: { trailer, couplingRatings, brakeTest } }: SheetContext): InputRow[] => [
  ['trailer.maximumMassKg', 'mass', trailer.maximumMassKg], ['trailer.axleCount', 'words', trailer.axleCount], ['trailer.brakes', 'words', trailer.brakes],
  ['trailer.brakedAxleCount', 'words', trailer.brakes === 'none' ? undefined : trailer.brakedAxleCount], ['trailer.builtYear', 'words', trailer.builtYear],
  ['couplingRatings.towVehicleMaximumKg', 'mass', trailer.brakes === 'surge' ? couplingRatings?.towVehicleMaximumKg : undefined],
  ['brakeTest.actuatorTravelM', 'smallLength', brakeTest?.actuatorTravelM], ['brakeTest.actuatorStrokeM', 'smallLength', brakeTest?.actuatorStrokeM],
  ['brakeTest.massKg', 'mass', brakeTest?.massKg],
  ...(brakeTest?.axles ?? []).flatMap(({ leftN, rightN }, index): InputRow[] => [[`brakeTest.axles.${index}.leftN`, 'force', leftN], [`brakeTest.axles.${index}.rightN`, 'force', rightN]]),
]

/** Loads the balance reckoned go into the tyres' sums, and are read on the sheet before. */
const fromBefore = ({ sums: { tyres }, words }: SheetContext): SumsSheet['inputs'] =>
  tyres.loads.length === 0 ? [] : [{ label: words.report.sums.axleLoads, value: words.report.sums.asBefore }]

const sheetOf = (context: SheetContext, id: SumsSheet['id'], { title, lines, formula, sources, cautions }: SumsSection, inputs: SumsSheet['inputs']): SumsSheet =>
  ({ id, title, figures: [], tables: [], lines: printed(context, lines), inputs, formulas: [formula], sources: [...sources], cautions: [...cautions] })

/** Tyres, coupling strength and brakes, each with its own ground; none where nothing beside the register was entered for them. */
export const tyresCouplingBrakesParts = (context: SheetContext): SumsSheet[] => {
  const { rig, sums, words, units } = context
  if (!rig.couplingRatings && !rig.brakeTest && sums.tyres.loads.length === 0) return []
  return [
    sheetOf(context, 'tyres', sayTyres(words, sums.tyres, units), [...inputsOf(context, tyreInputs(context)), ...fromBefore(context)]),
    sheetOf(context, 'coupling', sayCoupling(words, sums.coupling, units), inputsOf(context, couplingInputs(context))),
    sheetOf(context, 'brakes', sayBrakes(words, sums.brakes, units), inputsOf(context, brakeInputs(context))),
  ]
}
