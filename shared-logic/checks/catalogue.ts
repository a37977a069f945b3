import type { Check } from './check'
import { afterUseChecks } from './after-use'
import { axleChecks } from './axles'
import { brakeChecks } from './brakes'
import { bunkChecks } from './bunks'
import { couplerChecks } from './coupler'
import { frameChecks } from './frame'
import { gearKindChecks } from './gear-kinds'
import { hubChecks } from './hubs'
import { lightChecks } from './lights'
import { paperChecks } from './papers'
import { tieDownChecks } from './tie-down'
import { wheelChecks } from './wheels'
import { winchChecks } from './winch'

/** Raised whenever a check, criterion or judge changes; a survey keeps the version it was made with. */
export const catalogueVersion = '2026.6'

/** Every check, in walking order within its station. */
export const catalogue: readonly Check[] = [
  ...gearKindChecks,
  ...paperChecks,
  ...couplerChecks,
  ...winchChecks,
  ...frameChecks,
  ...bunkChecks,
  ...axleChecks,
  ...hubChecks,
  ...wheelChecks,
  ...brakeChecks,
  ...lightChecks,
  ...tieDownChecks,
  ...afterUseChecks,
]

const byId = new Map(catalogue.map((check) => [check.id, check]))
export const checkOf = (id: string): Check | undefined => byId.get(id)
