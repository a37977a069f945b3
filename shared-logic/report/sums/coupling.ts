import { sayBrakes } from '../../words/sums/brakes'
import { sayCoupling } from '../../words/sums/coupling'
import { sayTyres } from '../../words/sums/tyres'
import type { SumsSheet } from '../sums-document'
import { inputsOf, printed, type SheetContext } from './sheet-context'

const inputs = (context: SheetContext): SumsSheet['inputs'] => {
  const { trailer, couplingRatings: ratings, brakeTest } = context.rig
  return inputsOf(context, [
    ['trailer.maximumMassKg', 'mass', trailer.maximumMassKg], ['trailer.tyre.loadIndex', 'words', trailer.tyre?.loadIndex], ['trailer.coupler', 'words', trailer.coupler],
    ['trailer.ballDiameterM', 'smallLength', trailer.ballDiameterM], ['trailer.brakes', 'words', trailer.brakes], ['trailer.brakedAxleCount', 'words', trailer.brakedAxleCount],
    ['couplingRatings.towVehicleMaximumKg', 'mass', ratings?.towVehicleMaximumKg], ['couplingRatings.dValueN', 'force', ratings?.dValueN],
    ['couplingRatings.chainBreakingForceN', 'force', ratings?.chainBreakingForceN], ['couplingRatings.chainCount', 'words', ratings?.chainCount],
    ['brakeTest.actuatorTravelM', 'smallLength', brakeTest?.actuatorTravelM], ['brakeTest.actuatorStrokeM', 'smallLength', brakeTest?.actuatorStrokeM],
  ])
}

/** Tyres, coupling strength and brakes; absent where nothing beside the register was entered for them. */
export const couplingSheetPart = (context: SheetContext): SumsSheet | undefined => {
  const { rig, sums, words, units } = context
  if (!rig.couplingRatings && !rig.brakeTest && sums.tyres.loads.length === 0) return undefined
  const parts = [sayTyres(words, sums.tyres, units), sayCoupling(words, sums.coupling, units), sayBrakes(words, sums.brakes, units)]
  return {
    id: 'coupling', title: words.report.sums.couplingTitle, figures: [], tables: [], lines: parts.flatMap(({ title, lines }) => [{ text: title, heading: true as const }, ...printed(context, lines)]),
    inputs: inputs(context), formulas: parts.map(({ formula }) => formula), sources: [...new Set(parts.flatMap(({ sources }) => sources))], cautions: parts.flatMap(({ cautions }) => cautions),
  }
}
