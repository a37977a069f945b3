import { tieDownPlanOf } from '../lashing/plan'
import { faultsOf, withoutFaults } from '../sums/check-input'
import type { SumsSettings } from '../sums/settings'
import { sumsOf } from '../sums/sums'
import type { ReportContext } from './context'
import { balanceSheetPart } from './sums/balance'
import { loadSheetPart } from './sums/load'
import type { SheetContext } from './sums/sheet-context'
import { tieDownSheetPart } from './sums/tie-down'
import { tyresCouplingBrakesParts } from './sums/tyres-coupling-brakes'
import type { SumsPart } from './sums-document'

/**
 * The sums of the surveyed rig as they are printed, by the margins of the desk; undefined where there is nothing to print:
 * no mass is known, and nothing was entered for the balance, the coupling or the tie-down.
 */
export const sumsPart = ({ survey, words, units }: ReportContext, settings: SumsSettings): SumsPart | undefined => {
  const rig = withoutFaults(survey.rig, faultsOf(survey.rig))
  const context: SheetContext = { rig, words, units, surveyDate: survey.surveyDate, sums: sumsOf(survey.rig, survey.ruleBook, settings), plan: tieDownPlanOf(rig, survey.ruleBook) }
  const sheets = [loadSheetPart(context), balanceSheetPart(context), ...tyresCouplingBrakesParts(context), tieDownSheetPart(context)].filter((sheet) => sheet !== undefined)
  const { title, introduction, labels } = words.report.sums
  return sheets.length === 0 ? undefined : { title, introduction, labels: { ...labels }, sheets }
}
