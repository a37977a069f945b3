import { advisory, choiceCheck, failed, numberOf, passed } from './builders'
import type { Check } from './check'

const oilBath: Check['applies'] = (rig) => (rig.trailer.hubLubrication === undefined ? 'unknown' : rig.trailer.hubLubrication === 'oil bath')

/** Hubs and wheel bearings. A new check is a new row here and its texts in `words/en/checks/hubs`. */
export const hubChecks: readonly Check[] = [
  choiceCheck({
    id: 'hubs.oil-condition',
    station: 'hubs',
    positions: 'hub',
    applies: oilBath,
    drawing: 'sight glass',
    photograph: true,
    outcomes: {
      clear: passed,
      dark: advisory('at next service'),
      milky: failed('before it is towed'),
      'metal in it': failed('before it is towed'),
    },
    sources: [{ kind: 'published', title: 'Bearing and hub articles, boating education magazine', clause: 'cloudy oil means water inside' }],
  }),
  {
    id: 'hubs.oil-level',
    station: 'hubs',
    positions: 'hub',
    applies: oilBath,
    drawing: 'sight glass',
    photograph: true,
    fields: [{ kind: 'reading', id: 'level', quantity: 'ratio', min: 0, max: 1, drawing: 'sight glass' }],
    outcomes: { above: passed, half: passed, below: advisory('before next trip'), empty: failed('before it is towed') },
    judge: (values) => {
      const level = numberOf(values, 'level')
      if (level === undefined) return undefined
      if (level === 0) return { outcome: 'empty' }
      return { outcome: level > 0.5 ? 'above' : level === 0.5 ? 'half' : 'below' }
    },
    sources: [{ kind: 'common practice' }],
  },
]
