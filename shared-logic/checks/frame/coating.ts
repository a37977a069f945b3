import type { Trailer } from '../../rig/trailer'
import { commonPractice, fromMemory, law, newZealand, published, tradeLiterature } from '../../rules/cite'
import { ifKnown } from '../applies'
import { advisory, choiceCheck, failed, passed } from '../builders'
import type { Check } from '../check'

const madeOf = (material: NonNullable<Trailer['frame']>) => ifKnown((rig) => rig.trailer.frame, (frame) => frame === material)

export const frameCoatingChecks: readonly Check[] = [
  choiceCheck({
    id: 'frame.galvanizing',
    station: 'frame',
    positions: 'once',
    applies: madeOf('galvanized steel'),
    photograph: true,
    outcomes: {
      'even grey': passed,
      'light white product': passed,
      'heavy white product': advisory('within a month'),
      flaking: advisory('within a month'),
      'brown bloom': advisory('within a year'),
      'zinc gone': advisory('before next trip'),
    },
    sources: [tradeLiterature('galvanizing guidance', 'wet storage stain'), fromMemory('zinc-iron alloy layers turn brownish before the steel rusts'), commonPractice],
  }),
  choiceCheck({
    id: 'frame.paint',
    station: 'frame',
    positions: 'once',
    applies: madeOf('painted steel'),
    photograph: true,
    outcomes: { whole: passed, 'chalked or scratched': advisory('within a year'), 'edges and welds rusting': advisory('within a month'), 'blistered or lifting': advisory('before next trip') },
    sources: [
      newZealand('general trailers, 3-1: pitting, lifting or bubbling paint as signs of metal eaten away'),
      law('ships', 'IMO MSC.1/Circ.1330', '4.1.3, edges and welds rated apart'),
      commonPractice,
    ],
  }),
  choiceCheck({
    id: 'frame.galvanic-isolation',
    station: 'frame',
    positions: 'once',
    applies: madeOf('aluminium'),
    photograph: true,
    outcomes: { isolated: passed, 'not isolated, no attack': advisory('within a year'), 'white product round fasteners': advisory('before next trip'), 'holes eaten large': failed('before it is towed') },
    sources: [published('MIL-DTL-14072F', '3.13, dissimilar metals: the smaller part is the cathode'), tradeLiterature('anodic index tables', 'more than 0.15 V apart outdoors in salt'), commonPractice],
  }),
  choiceCheck({
    id: 'frame.drain-holes',
    station: 'frame',
    positions: 'once',
    outcomes: { open: passed, 'open sections': passed, blocked: advisory('within a month'), 'none in closed sections': advisory('within a year'), 'water inside': advisory('before next trip') },
    sources: [commonPractice],
  }),
]
