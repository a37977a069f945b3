import type { Answer } from '../../shared-logic/survey/answer'
import { spotsNow } from './tandem-spots'

type Written = Partial<Answer> & Pick<Answer, 'values'>

const chosen = (condition: string, note?: string): Written => ({ values: { condition }, ...(note !== undefined && { note }) })
const unseen = (reason: string): Written => ({ values: {}, aside: { as: 'not seen', reason } })

const hubNotOpened = chosen('hub not taken off')
const capNotOpened = chosen('cap not taken off')

/** What was found on the tandem, what could not be seen and what deserved a note, by check and position. Invented. */
export const tandemAnswers: Readonly<Record<string, Written>> = {
  'papers.recall @ rig': chosen('not looked up', 'No signal at the landing. To be looked up by the number before the sale is closed.'),
  'papers.owner @ rig': chosen('lien or finance', 'The title names a lender. Ask for the release before money changes hands.'),
  'coupler.latch @ rig': chosen('closes and locks', 'Pin and clip new this year.'),
  'coupler.body @ rig': {
    ...chosen('surface rust', 'A brown bloom on the upper side.'),
    overrule: { verdict: 'pass', reason: 'Wiped off with a thumb: filings from the workshop. The zinc under it is whole.' },
  },
  'coupler.jack @ rig': chosen('stiff', 'Turns hard over the last third.'),
  'coupler.chain-hooks @ chain right': chosen('latch missing', 'Spring latch broken off at its rivet.'),
  'winch.second-tie @ rig': chosen('down and back', 'Ratchet strap from the bow eye down and back to the tongue.'),
  'winch.bow-stop @ rig': { values: { stem: 'bears' }, note: 'Bears over its whole height.' },
  'winch.bow-pad @ rig': chosen('worn'),
  'frame.closed-sections @ cross-members': chosen('cannot be reached', 'Boxed in by bunk brackets and the boat.'),
  'frame.corrosion @ cross-members': {
    values: { spots: [...spotsNow['cross-members']] },
    note: 'Where the strap anchor has chafed through the zinc.',
  },
  'frame.corrosion @ left rail': { values: { spots: [...spotsNow['left rail']] }, note: 'Cold galvanized since, and sound.' },
  'frame.galvanizing @ rig': chosen('heavy white product', 'At the bunk brackets of the left rail, where leaves held water over the winter.'),
  'frame.fasteners @ rig': chosen('surface rust', 'Four bunk bolts, zinc plated, not galvanized.'),
  'bunks.surface @ bunk left': chosen('worn thin', 'Carpet worn over the last 40 cm.'),
  'bunks.timber @ bunk right': unseen('The boat lies on it and the carpet is whole all round; the timber could not be probed.'),
  'axles.spindle @ axle 1 left': hubNotOpened,
  'axles.spindle @ axle 1 right': hubNotOpened,
  'axles.spindle @ axle 2 left': hubNotOpened,
  'axles.spindle @ axle 2 right': hubNotOpened,
  'axles.u-bolts @ axle 2 right': chosen('surface rust'),
  'hubs.retainer @ axle 1 left': capNotOpened,
  'hubs.retainer @ axle 1 right': capNotOpened,
  'hubs.retainer @ axle 2 left': capNotOpened,
  'hubs.retainer @ axle 2 right': capNotOpened,
  'hubs.oil-level @ axle 1 left': { values: { level: 0.7 } },
  'hubs.oil-level @ axle 2 left': { values: { level: 0.35 }, note: 'No trace of a leak on the wheel; the plug was damp.' },
  'hubs.oil-condition @ axle 2 right': chosen('milky', 'Milky through and through. Launched hot last autumn, the owner says.'),
  'hubs.seal @ axle 2 right': chosen('old trace, dry', 'A dark fan on the inside of the wheel, dry to the finger.'),
  'hubs.heat @ axle 2 right': { values: { hub: 41, others: 32, air: 18 }, note: 'After the 20 km from the owner’s yard.' },
  'wheels.tread @ axle 1 left': { values: { depth: 0.0048 } },
  'wheels.tread @ axle 1 right': { values: { depth: 0.0024 }, note: 'Least of four places round the tyre.' },
  'wheels.age @ axle 1 left': { values: { code: 'read', date: '2319' }, note: 'The only one left of the first set.' },
  'wheels.wear @ axle 1 right': chosen('one shoulder'),
  'wheels.age @ spare': { values: { code: 'read', date: '0817' } },
  'wheels.sidewall @ spare': chosen('deep cracks', 'Nine open cracks on the side that faced the sun.'),
  'wheels.pressure @ spare': { values: { pressure: 331_000, state: 'cold' } },
  'brakes.actuator-travel @ rig': { values: { travel: 0.032, stroke: 0.102 }, note: 'Pushed in by the jockey bar, three times the same.' },
  'brakes.static-test @ rig': chosen('not tried', 'No level hard ground at the landing.'),
  'brakes.reverse-lockout @ rig': chosen('not tried', 'For the same reason.'),
  'brakes.breakaway-hold @ rig': unseen('Not pulled: the owner was away and would have had to bleed the brakes if the lever stuck.'),
  'brakes.lining @ axle 1 left': { values: { thickness: 0.002, fixing: 'bonded' }, note: 'The outer pad. The inner one has 4 mm.' },
  'brakes.lining @ axle 1 right': { values: { thickness: 0.0048, fixing: 'bonded' } },
  'brakes.calipers @ axle 1 left': chosen('pins dry'),
  'brakes.disc-surface @ axle 2 left': chosen('flash rust', 'Gone after two stops.'),
  'lights.lamp @ lamp stop right': { values: { state: 'lens broken' }, note: 'A piece as large as a palm is gone; the bulb still lights.' },
  'lights.lamp @ lamp side marker rear left': { values: { state: 'dim' } },
  'lights.wiring-run @ rig': chosen('pinched', 'Under the second clip on the left rail; the green wire is bare over about a centimetre.'),
  'lights.wiring-joints @ rig': chosen('taped or twisted', 'One joint behind the winch post.'),
  'tie-down.webbing @ strap transom left': {
    values: { damage: 'fraying', length: 0.004, width: 0.05 },
    overrule: { verdict: 'fail', reason: 'It is worn where it bears on the corner of the transom and will go on fraying on the drive home.' },
  },
  'tie-down.webbing @ strap transom right': { values: { damage: 'cut', length: 0.017, width: 0.05 }, note: 'A clean cut, as from a knife or a trim tab.' },
  'tie-down.label @ strap transom right': { values: { marking: 'unreadable', width: 0.05 } },
  'tie-down.drain-plug @ rig': chosen('out, hull drained'),
  'after-use.rinse @ rig': chosen('now and then'),
  'after-use.hubs-cooled @ rig': chosen('straight into the water', 'As told by the owner.'),
}
