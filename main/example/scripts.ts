import { singleAxle, tandem } from './rigs'
import { tandemAnswers } from './tandem-answers'
import { tandemInstruments, tandemReadings } from './tandem-readings'
import type { Script } from './walk'

/** The day the pictures carry. */
export const tandemScript: Script = {
  rig: tandem, ruleBook: 'us', surveyDate: '2026-05-16', answers: tandemAnswers, readings: tandemReadings, instruments: tandemInstruments,
}

/** Answered up to this station and no further: the survey is under way. */
export const singleAxleStopsBefore = 'winch'

export const singleAxleScript = (surveyDate: string): Script => ({
  rig: singleAxle,
  ruleBook: 'us',
  surveyDate,
  instruments: {},
  readings: {
    'papers.identification-number': { read: 'another', number: '1EXAS1411N1000042' },
    'papers.hull-number': { read: 'another', number: 'XMP20042C222' },
    'papers.loaded-mass': { basis: 'from papers', loaded: 430 },
    'papers.axle-load': { axles: 395 },
    'papers.axle-ratings': { coupling: 38 },
    'coupler.class': { marking: 'marked', capacity: 907 },
    'coupler.ball-size': { socket: 0.0476, ball: 0.0476 },
    'coupler.ball-wear': { diameter: 0.0476, surface: 'smooth' },
    'coupler.chain-strength': { marking: 'breaking strength', strength: 9_000 },
  },
  answers: {
    'papers.rating-plate @ rig': { values: { condition: 'partly legible' }, note: 'The axle rating is scratched away.' },
    'coupler.chain-routing @ rig': { values: { condition: 'not crossed' } },
    'coupler.chain-condition @ chain left': { values: { condition: 'surface rust' } },
  },
})
