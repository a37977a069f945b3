import { settings } from './0010-settings'
import { rigs } from './0020-rigs'
import { surveys } from './0030-surveys'
import { answers } from './0040-answers'
import { photographs } from './0050-photographs'
import { reports } from './0060-reports'
import { photographsFromTheWalkRound } from './0070-photographs-from-the-walk-round'
import { photographLog } from './0080-photograph-log'
import { copiesAndReportsRecorded } from './0090-copies-and-reports-recorded'
import { surveyList } from './0100-survey-list'
import type { Migration } from './migration'

/** Every step in order. */
export const migrations: readonly Migration[] = [settings, rigs, surveys, answers, photographs, reports, photographsFromTheWalkRound, photographLog, copiesAndReportsRecorded, surveyList]
