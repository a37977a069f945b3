import { checks } from './checks'
import { commandLine } from './command-line'
import { corrosionWords } from './corrosion'
import { doorWords } from './doors'
import { fieldOptions } from './field-options'
import { fields } from './fields'
import { proofWords } from './proof'
import { refusals } from './refusals'
import { reportWords } from './report'
import { cameraWords } from './screens/camera'
import { contactSheetWords } from './screens/contact-sheet'
import { corrosionScreenWords } from './screens/corrosion'
import { markingWords } from './screens/marking'
import { measuringWords } from './screens/measuring'
import { photographWords } from './screens/photographs'
import { pictureBoardWords } from './screens/picture-board'
import { phonePageWords, phonePanelWords } from './screens/phone'
import { reportPageWords } from './screens/report-page'
import { rigWords } from './screens/rig'
import { settingsWords } from './screens/settings'
import { shellWords } from './screens/shell'
import { sumsScreenWords } from './screens/sums'
import { surveyWords } from './screens/survey'
import { yardWords } from './screens/yard'
import { sumsWords } from './sums'
import { tieDownPlanWords } from './tie-down-plan'
import { trade } from './trade'

/** English. Another language is another file of the same shape. */
export const en = {
  ...trade,
  checks,
  fields,
  fieldOptions,
  refusals,
  report: reportWords,
  sums: sumsWords,
  tieDownPlan: tieDownPlanWords,
  corrosion: corrosionWords,
  proof: proofWords,
  commandLine,
  doors: doorWords,
  screens: { yard: yardWords, rig: rigWords, survey: surveyWords, measuring: measuringWords, marking: markingWords, pictureBoard: pictureBoardWords, sums: sumsScreenWords, reportPage: reportPageWords, contactSheet: contactSheetWords, camera: cameraWords, photographs: photographWords, corrosion: corrosionScreenWords, phone: { page: phonePageWords, panel: phonePanelWords }, settings: settingsWords, shell: shellWords },
}
export type Words = typeof en
