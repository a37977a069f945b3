import type { Desk } from '../../shared-logic/contract/contract'
import { answerProcedures } from './answers'
import { corrosionProcedures } from './corrosion'
import type { Parts } from './parts'
import { photographProcedures } from './photographs'
import { phoneProcedures } from './phone'
import { proofProcedures } from './proof'
import { reportProcedures } from './reports'
import { rigProcedures } from './rigs'
import { settingsProcedures } from './settings'
import { surveyProcedures } from './surveys'
import { yardProcedures } from './yard'

/** The desk: every procedure of the contract, once. Inputs are expected parsed; `answerCall` does that for the doors. */
export const makeDesk = (parts: Parts): Desk => {
  const desk: Desk = {
    ...yardProcedures(parts, () => desk),
    ...settingsProcedures(parts),
    ...rigProcedures(parts),
    ...surveyProcedures(parts),
    ...answerProcedures(parts),
    ...corrosionProcedures(parts),
    ...photographProcedures(parts),
    ...phoneProcedures(parts),
    ...proofProcedures(parts),
    ...reportProcedures(parts),
  }
  return desk
}
