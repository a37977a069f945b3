import { endPlayM, hubGoodC, hubHotterK, hubMuchHotterK, hubOverAirK, hubStopC } from '../../rules/bearings'
import { commonPractice, fromMemory, maryland, roadworthiness } from '../../rules/cite'
import { bearingArticles } from '../../rules/running-gear-sources'
import { measured } from '../../units/quantity'
import { advisory, choiceCheck, failed, numberOf, passed, textOf, unseen } from '../builders'
import type { Check, Found } from '../check'

/** A reading this much over a limit is still the limit: rounding of degrees Fahrenheit. */
const slackK = 0.01

const heatFound = (hubC: number, othersC: number | undefined, airC: number | undefined): Found | undefined => {
  const hub = measured('temperature', hubC)
  if (hubC > hubStopC + slackK) return { outcome: 'stop', values: { hub } }
  if (othersC !== undefined) {
    const rise = measured('temperatureRise', hubC - othersC)
    if (rise.si >= hubMuchHotterK - slackK) return { outcome: 'much hotter', values: { hub, rise } }
    if (rise.si >= hubHotterK - slackK) return { outcome: 'hotter', values: { hub, rise } }
  }
  if (hubC > hubGoodC + slackK) return { outcome: 'warm', values: { hub } }
  if (othersC !== undefined) return { outcome: 'even', values: { hub } }
  if (airC === undefined) return undefined
  const rise = measured('temperatureRise', hubC - airC)
  return { outcome: rise.si <= hubOverAirK + slackK ? 'near the air' : 'not compared', values: { hub, rise } }
}

/** Play, running and heat of the wheel bearings, and what keeps their lubricant in. */
export const hubBearingChecks: readonly Check[] = [
  choiceCheck({
    id: 'hubs.seal',
    station: 'hubs',
    positions: 'hub',
    photograph: true,
    drawing: 'hub',
    outcomes: {
      dry: passed,
      'old trace, dry': advisory('at next service'),
      'on the wheel': failed('before it is towed'),
      'on the brake': failed('before it is towed'),
    },
    sources: [bearingArticles],
  }),
  {
    id: 'hubs.end-play',
    station: 'hubs',
    positions: 'hub',
    drawing: 'hub',
    caution: true,
    fields: [
      { kind: 'choice', id: 'felt', options: ['no rock', 'slight rock', 'rock and knock'] },
      { kind: 'reading', id: 'play', quantity: 'smallLength', min: 0, max: 0.01, optional: true, when: { field: 'felt', oneOf: ['no rock', 'slight rock'] } },
    ],
    outcomes: {
      'no rock': passed,
      inside: passed,
      none: advisory('before next trip'),
      'slight rock': advisory('before next trip'),
      over: advisory('before next trip'),
      'rock and knock': failed('before it is towed'),
    },
    judge: (values) => {
      const felt = textOf(values, 'felt')
      const play = numberOf(values, 'play')
      if (felt === undefined) return undefined
      if (play === undefined || felt === 'rock and knock') return { outcome: felt }
      const shown = { play: measured('smallLength', play) }
      if (play > endPlayM.most + 1e-7) return { outcome: 'over', values: shown }
      return { outcome: play < endPlayM.least - 1e-7 ? 'none' : 'inside', values: shown }
    },
    sources: [roadworthiness('5.1.3'), maryland('11.14.05.03 A(1)'), fromMemory('end play 0.001 to 0.010 in, as one trailer maker’s manual has it'), commonPractice],
  },
  choiceCheck({
    id: 'hubs.turning',
    station: 'hubs',
    positions: 'hub',
    drawing: 'hub',
    caution: true,
    outcomes: {
      'free and quiet': passed,
      'brake rubs lightly': passed,
      tight: advisory('before next trip'),
      rough: failed('before it is towed'),
      seized: failed('before it is towed'),
    },
    sources: [roadworthiness('5.1.3'), maryland('11.14.05.03 A(1)'), commonPractice],
  }),
  {
    id: 'hubs.heat',
    station: 'hubs',
    positions: 'hub',
    drawing: 'hub',
    caution: true,
    fields: [
      { kind: 'reading', id: 'hub', quantity: 'temperature', min: -20, max: 300 },
      { kind: 'reading', id: 'others', quantity: 'temperature', min: -20, max: 300, optional: true },
      { kind: 'reading', id: 'air', quantity: 'temperature', min: -30, max: 55, optional: true },
    ],
    outcomes: {
      even: passed,
      'near the air': passed,
      'not compared': unseen,
      warm: advisory('before next trip'),
      hotter: advisory('before next trip'),
      'much hotter': failed('before it is towed'),
      stop: failed('before it is towed'),
    },
    judge: (values) => {
      const hub = numberOf(values, 'hub')
      return hub === undefined ? undefined : heatFound(hub, numberOf(values, 'others'), numberOf(values, 'air'))
    },
    sources: [bearingArticles, commonPractice],
  },
  choiceCheck({
    id: 'hubs.cap',
    station: 'hubs',
    positions: 'hub',
    photograph: true,
    drawing: 'hub',
    outcomes: {
      tight: passed,
      'piston sunk in': advisory('before next trip'),
      dented: advisory('at next service'),
      loose: advisory('before next trip'),
      missing: failed('before it is towed'),
    },
    sources: [commonPractice],
  }),
  choiceCheck({
    id: 'hubs.retainer',
    station: 'hubs',
    positions: 'hub',
    outcomes: {
      locked: passed,
      'pin rusted or reused': advisory('at next service'),
      'not locked': failed('before it is towed'),
      'cap not taken off': unseen,
    },
    sources: [commonPractice],
  }),
]
