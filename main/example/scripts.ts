import { walkRoundChecks } from '../../shared-logic/checks/depth'
import { singleAxle, tandem, tandemBefore } from './rigs'
import { tandemAnswers } from './tandem-answers'
import { tandemInstruments, tandemReadings } from './tandem-readings'
import { spotsBefore } from './tandem-spots'
import type { Script } from './walk'

/** The day the pictures carry. */
export const tandemScript: Script = {
  rig: tandem, ruleBook: 'us', purpose: 'purchase', surveyDate: '2026-05-16', answers: tandemAnswers, readings: tandemReadings, instruments: tandemInstruments,
}

const onWalkRound = <Told>(told: Readonly<Record<string, Told>>): Record<string, Told> => Object.fromEntries(Object.entries(told).filter(([checkId]) => walkRoundChecks.has(checkId)))

/** A walk-round two years before: nothing found but rust, which the later survey finds again. */
export const tandemBeforeScript: Script = {
  rig: tandemBefore, ruleBook: 'us', purpose: 'before tow', surveyDate: '2024-05-11', instruments: onWalkRound(tandemInstruments),
  readings: { ...onWalkRound(tandemReadings), 'papers.loaded-mass': { basis: 'from papers', loaded: 2_650 }, 'brakes.actuator-travel': { travel: 0.024, stroke: 0.102 }, 'after-use.service-record': { record: 'seen', last: '2023-10-02' } },
  answers: {
    'frame.corrosion @ cross-members': { values: { spots: [...spotsBefore['cross-members']] }, note: 'Under the strap anchor.' },
    'frame.corrosion @ left rail': { values: { spots: [...spotsBefore['left rail']] } },
  },
}

/** Answered up to this station and no further: the survey is under way. */
export const singleAxleStopsBefore = 'hubs'

export const singleAxleScript = (surveyDate: string): Script => ({
  rig: singleAxle,
  ruleBook: 'us',
  purpose: 'hire out',
  surveyDate,
  instruments: {},
  readings: {
    'papers.loaded-mass': { basis: 'from papers', loaded: 430 },
    'coupler.ball-size': { socket: 0.0476, ball: 0.0476 },
    'frame.corrosion': { spots: [] },
  },
  answers: {
    'papers.rating-plate @ rig': { values: { condition: 'partly legible' }, note: 'The axle rating is scratched away.' },
    'coupler.chain-routing @ rig': { values: { condition: 'not crossed' } },
    'coupler.chain-condition @ chain left': { values: { condition: 'surface rust' } },
    'frame.fasteners @ rig': { values: { condition: 'wrong metal' }, note: 'Two plated bolts at the winch post, the rest are stainless.' },
  },
})
