import type { CheckWords } from '../../check-words'
import { afterUseWords } from './after-use'
import { axleWords } from './axles'
import { brakeWords } from './brakes'
import { bunkWords } from './bunks'
import { couplerWords } from './coupler'
import { frameWords } from './frame'
import { gearKindWords } from './gear-kinds'
import { hubWords } from './hubs'
import { lightWords } from './lights'
import { paperWords } from './papers'
import { tieDownWords } from './tie-down'
import { wheelWords } from './wheels'
import { winchWords } from './winch'

export const checks: Readonly<Record<string, CheckWords>> = {
  ...gearKindWords,
  ...paperWords,
  ...couplerWords,
  ...winchWords,
  ...frameWords,
  ...bunkWords,
  ...axleWords,
  ...hubWords,
  ...wheelWords,
  ...brakeWords,
  ...lightWords,
  ...tieDownWords,
  ...afterUseWords,
}
