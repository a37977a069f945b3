import { commercialRule, commonPractice, newZealand, roadworthiness, ukInspection } from '../../rules/cite'
import { ifKnown } from '../applies'
import { advisory, choiceCheck, failed, passed, unseen } from '../builders'
import type { Check } from '../check'

const frames = commercialRule('393.201', 'not cracked, loose, sagging or broken')
const frameRepairs = commercialRule('393.201(d)', 'welded repair only as the maker recommends')
const chassis = roadworthiness('6.1.1, general condition of the chassis')
const zealand = newZealand('general trailers, 3-1')
const structure = { us: [frames, commonPractice], eu: [chassis, zealand, commonPractice] }

export const frameStructureChecks: readonly Check[] = [
  choiceCheck({
    id: 'frame.straight',
    station: 'frame',
    positions: 'frame member',
    photograph: true,
    outcomes: { straight: passed, 'slightly out of true': advisory('within a month'), dented: advisory('before next trip'), 'bent or sagging': failed('before it is towed') },
    sources: structure,
  }),
  choiceCheck({
    id: 'frame.cracks',
    station: 'frame',
    positions: 'frame member',
    photograph: true,
    outcomes: { 'none seen': passed, suspected: advisory('before it is towed'), cracked: failed('before it is towed'), broken: failed('before it is towed') },
    sources: structure,
  }),
  choiceCheck({
    id: 'frame.welds',
    station: 'frame',
    positions: 'frame member',
    drawing: 'weld',
    photograph: true,
    outcomes: { sound: passed, 'no welds here': passed, 'poor run': advisory('within a month'), 'rust bleeds': advisory('before next trip'), 'eaten away': failed('before it is towed'), cracked: failed('before it is towed') },
    sources: structure,
  }),
  choiceCheck({
    id: 'frame.closed-sections',
    station: 'frame',
    positions: 'frame member',
    applies: ifKnown((rig) => rig.trailer.frame, (frame) => frame !== 'aluminium'),
    photograph: true,
    caution: true,
    outcomes: {
      'rings sound': passed,
      'open section, seen both sides': passed,
      'rust falls out': advisory('before next trip'),
      dull: advisory('before it is towed'),
      'gives way': failed('before it is towed'),
      'cannot be reached': unseen,
    },
    sources: [ukInspection('Appendix A: finger and thumb, light scraping or tapping; corroded metal sounds dull'), commonPractice],
  }),
  choiceCheck({
    id: 'frame.repairs',
    station: 'frame',
    positions: 'once',
    drawing: 'weld',
    photograph: true,
    outcomes: {
      'none seen': passed,
      'proper, with papers': passed,
      'proper, no papers': advisory('within a month'),
      'coating not made good': advisory('within a month'),
      'poor or makeshift': failed('before it is towed'),
      'plate over rust': failed('before it is towed'),
    },
    sources: { us: [frameRepairs, commonPractice], eu: [newZealand('general trailers, 3-1: no filler over corrosion'), chassis] },
  }),
  choiceCheck({
    id: 'frame.disguise',
    station: 'frame',
    positions: 'once',
    photograph: true,
    outcomes: { 'nothing hidden': passed, 'fresh paint or undercoat': advisory('before next trip'), 'filler found': failed('before it is towed') },
    sources: [zealand, commonPractice],
  }),
  choiceCheck({
    id: 'frame.cross-member-attachment',
    station: 'frame',
    positions: 'once',
    photograph: true,
    outcomes: { tight: passed, 'U-bolts rusted': advisory('before next trip'), shifted: advisory('before it is towed'), loose: failed('before it is towed'), cracked: failed('before it is towed') },
    sources: { us: [frames, commonPractice], eu: [chassis] },
  }),
]
