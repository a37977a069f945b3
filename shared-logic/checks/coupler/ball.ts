import { judgeBallWear, leastBallInUseM, newBall50M, wearShare } from '../../rules/ball-wear'
import { isUnder } from '../../rules/beyond'
import { commonPractice, newZealand, published, tradeLiterature } from '../../rules/cite'
import { towBallGuides } from '../../rules/running-gear-sources'
import { leastBallM } from '../../rules/coupler-classes'
import { measured } from '../../units/quantity'
import { advisory, choiceCheck, failed, numberOf, passed, textOf, unseen } from '../builders'
import type { Check, Found } from '../check'

const smallLength = (m: number) => measured('smallLength', m)

/** Marked sizes closer than this are one size; 50 mm and 2 in (50.8 mm) are two. Common practice. */
const sameSizeM = 0.0004
/** A ball this little smaller than the socket is an advisory, not a fail: 50 mm in a 2 in socket. Common practice. */
const nearSizeM = 0.001

const judgeSize = (socketM: number, ballM: number, maximumKg: number | undefined): Found => {
  const values = { socket: smallLength(socketM), ball: smallLength(ballM) }
  const difference = socketM - ballM
  if (Math.abs(difference) > sameSizeM) return { outcome: difference < 0 ? 'ball too large' : difference < nearSizeM ? 'ball slightly small' : 'ball too small', values }
  const least = maximumKg === undefined ? undefined : leastBallM(maximumKg)
  return least !== undefined && isUnder(ballM, least - sameSizeM) ? { outcome: 'small for the class', values: { ...values, least: smallLength(least) } } : { outcome: 'matches', values }
}

/** Where on the ball wear shows; anything but smooth is at least an advisory. Common practice. */
const judgeWear = (nominalM: number, measuredM: number, surface: string): Found => {
  const wear = judgeBallWear(nominalM, measuredM)
  const values = { measured: smallLength(measuredM), nominal: smallLength(nominalM), least: smallLength(leastBallInUseM(nominalM)), fresh: smallLength(newBall50M), wear: measured('ratio', Math.max(0, wearShare(nominalM, measuredM))) }
  if (wear === 'worn out') return { outcome: 'worn out', values }
  if (wear === 'worn, within limit') return { outcome: 'worn', values }
  return { outcome: surface === 'smooth' ? 'as new' : 'marked', values }
}

export const couplerBallChecks: readonly Check[] = [
  {
    id: 'coupler.ball-size',
    station: 'coupler',
    positions: 'once',
    drawing: 'ball gauge',
    photograph: true,
    fields: [
      { kind: 'reading', id: 'socket', quantity: 'smallLength', min: 0.03, max: 0.12 },
      { kind: 'reading', id: 'ball', quantity: 'smallLength', min: 0.03, max: 0.12, optional: true },
    ],
    outcomes: {
      matches: passed,
      'small for the class': advisory('before next trip'),
      'ball slightly small': advisory('before it is towed'),
      'ball too small': failed('before it is towed'),
      'ball too large': failed('before it is towed'),
      'ball unknown': unseen,
    },
    judge: (values, { rig, ruleBook }) => {
      const socketM = numberOf(values, 'socket')
      const ballM = numberOf(values, 'ball') ?? rig.trailer.ballDiameterM
      if (socketM === undefined) return undefined
      if (ballM === undefined) return { outcome: 'ball unknown', values: { socket: smallLength(socketM) } }
      return judgeSize(socketM, ballM, ruleBook === 'us' ? rig.trailer.maximumMassKg : undefined)
    },
    sources: {
      us: [towBallGuides('a 1-7/8 in ball in a 50 mm socket can jump off'), published('SAE J684, classes as restated in a state’s rules (COMAR 11.13.08.10)', 'smallest ball by class'), commonPractice],
      eu: [towBallGuides('a 1-7/8 in ball in a 50 mm socket can jump off'), commonPractice],
    },
  },
  {
    id: 'coupler.ball-wear',
    station: 'coupler',
    positions: 'once',
    drawing: 'ball gauge',
    photograph: true,
    fields: [
      { kind: 'reading', id: 'diameter', quantity: 'smallLength', min: 0.03, max: 0.12, drawing: 'ball gauge' },
      { kind: 'choice', id: 'surface', options: ['smooth', 'flat or grooved', 'pitted'] },
    ],
    outcomes: { 'as new': passed, marked: advisory('before next trip'), worn: advisory('before next trip'), 'worn out': failed('before it is towed'), 'size unknown': unseen },
    judge: (values, { rig }) => {
      const diameterM = numberOf(values, 'diameter')
      const surface = textOf(values, 'surface')
      if (diameterM === undefined || surface === undefined) return undefined
      const nominalM = rig.trailer.ballDiameterM
      return nominalM === undefined ? { outcome: 'size unknown', values: { measured: smallLength(diameterM) } } : judgeWear(nominalM, diameterM, surface)
    },
    sources: [
      tradeLiterature('vehicle makers’ repair manuals', '50 mm ball: at least 49 mm at all points'),
      tradeLiterature('tow ball guide restating Directive 94/20/EC', '50 mm, +0 / −0.39 mm when new'),
      newZealand('towing connections: more than 5 % worn'),
    ],
  },
  choiceCheck({
    id: 'coupler.ball-nut',
    station: 'coupler',
    positions: 'once',
    caution: true,
    outcomes: { tight: passed, 'torque not known': advisory('before next trip'), 'thread short': failed('before it is towed'), 'washer missing': advisory('before it is towed'), loose: failed('before it is towed') },
    sources: [tradeLiterature('vehicle handbook on its hitch ball', 'at least two threads beyond the nut'), commonPractice],
  }),
]
