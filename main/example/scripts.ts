import { singleAxle, tandem } from './rigs'
import { tandemAnswers } from './tandem-answers'
import { tandemInstruments, tandemReadings } from './tandem-readings'
import type { Script } from './walk'

/** The day the pictures carry. */
export const tandemScript: Script = {
  rig: tandem, ruleBook: 'us', purpose: 'purchase', surveyDate: '2026-05-16', answers: tandemAnswers, readings: tandemReadings, instruments: tandemInstruments,
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
