import type { Rig } from '../rig/rig'
import { hubLubrications, hullSupports, suspensions, trailerBrakes, winchForms, type Trailer } from '../rig/trailer'
import { commonPractice } from '../rules/cite'
import type { RuleBook } from '../rules/rule-book'
import type { StationId } from '../survey/station'
import { choiceCheck, unseen } from './builders'
import type { Check } from './check'

type GearKey = 'winch' | 'supports' | 'suspension' | 'hubLubrication' | 'brakes'

/** Gear that comes in kinds, each with checks of its own. */
interface Gear {
  readonly key: GearKey
  readonly station: StationId
  readonly kinds: readonly string[]
  /** The trailer with each kind that is really something; that there is none is no kind. */
  readonly asEach: (trailer: Trailer) => readonly Trailer[]
}

const gear: readonly Gear[] = [
  { key: 'winch', station: 'winch', kinds: winchForms, asEach: (trailer) => winchForms.filter((winch) => winch !== 'none').map((winch) => ({ ...trailer, winch })) },
  { key: 'supports', station: 'bunks', kinds: hullSupports, asEach: (trailer) => hullSupports.map((supports) => ({ ...trailer, supports })) },
  { key: 'suspension', station: 'axles', kinds: suspensions, asEach: (trailer) => suspensions.filter((suspension) => suspension !== 'none').map((suspension) => ({ ...trailer, suspension })) },
  { key: 'hubLubrication', station: 'hubs', kinds: hubLubrications, asEach: (trailer) => hubLubrications.map((hubLubrication) => ({ ...trailer, hubLubrication })) },
  { key: 'brakes', station: 'brakes', kinds: trailerBrakes, asEach: (trailer) => trailerBrakes.filter((brakes) => brakes !== 'none').map((brakes) => ({ ...trailer, brakes })) },
]

const recordOf = ({ key }: Gear): string => `trailer.${key}`

/**
 * On a walk-round, one question in place of the checks of every kind the gear could be. The answer is not judged: until the
 * record names the kind, its checks are not asked, and that counts as not seen.
 */
export const gearKindChecks: readonly Check[] = gear.map((each) =>
  choiceCheck({
    id: `${each.station}.kind`,
    station: each.station,
    positions: 'once',
    applies: ({ trailer }) => trailer[each.key] === undefined,
    outcomes: Object.fromEntries(each.kinds.map((kind) => [kind, unseen])),
    sources: [commonPractice],
    record: recordOf(each),
  }),
)

/** Whether a check is asked whatever the gear not recorded turns out to be. */
export const askedOfEveryKind = (check: Check, rig: Rig, ruleBook: RuleBook): boolean =>
  check.applies?.(rig, ruleBook) !== 'unknown'
  || gear.filter(({ key }) => rig.trailer[key] === undefined).every(({ asEach }) => asEach(rig.trailer).every((trailer) => check.applies?.({ ...rig, trailer }, ruleBook) !== false))

/** The rig as it would be recorded with each kind, for the check that asks which it is; none for any other check. */
export const rigAsEachKind = (check: Check, rig: Rig): readonly Rig[] =>
  gear.filter((each) => each.station === check.station && recordOf(each) === check.record).flatMap(({ asEach }) => asEach(rig.trailer).map((trailer) => ({ ...rig, trailer })))
