import { assertNever } from '../assert-never'
import type { Purpose } from '../survey/purpose'
import { gearKindChecks } from './gear-kinds'

/** How deep a survey goes: everything the catalogue asks, or what is looked at before every trip. */
export type Depth = 'thorough' | 'walk-round'

export const depthOf = (purpose: Purpose): Depth => {
  switch (purpose) {
    case 'purchase':
    case 'sale':
    case 'yearly':
      return 'thorough'
    case 'hire out':
    case 'hire in':
    case 'before tow':
      return 'walk-round'
    default:
      return assertNever(purpose)
  }
}

/** Asked on a walk-round alone: a thorough survey asks the checks of every kind instead. */
export const walkRoundOnly: ReadonlySet<string> = new Set(gearKindChecks.map(({ id }) => id))

/**
 * Asked on every walk-round: what can come loose, run low, wear through or be forgotten from one trip to the next.
 * The rest needs tools, papers or a lift and is asked in a thorough survey. Common practice, no source.
 */
export const walkRoundChecks: ReadonlySet<string> = new Set([
  'papers.registration', 'papers.rating-plate', 'papers.loaded-mass',
  'coupler.latch', 'coupler.body', 'coupler.ball-size', 'coupler.ball-nut', 'coupler.level', 'coupler.jack', 'coupler.surge-play', 'coupler.folding-tongue',
  'coupler.chain-condition', 'coupler.chain-hooks', 'coupler.chain-routing', 'coupler.secondary',
  'winch.post', 'winch.strap', 'winch.cable', 'winch.hook', 'winch.gears', 'winch.safety-chain', 'winch.second-tie', 'winch.bow-stop',
  'frame.cracks', 'frame.corrosion', 'frame.fasteners', 'frame.fenders',
  'bunks.surface', 'bunks.rollers', 'bunks.bearing', 'bunks.square', 'bunks.transom',
  'axles.leaf-springs', 'axles.torsion-arms', 'axles.coil-springs', 'axles.mounting', 'axles.u-bolts',
  'hubs.oil-level', 'hubs.oil-condition', 'hubs.seal', 'hubs.cap', 'hubs.heat',
  'wheels.tread', 'wheels.sidewall', 'wheels.pressure', 'wheels.nuts', 'wheels.rim', 'wheels.spare',
  'brakes.required', 'brakes.actuator-travel', 'brakes.static-test', 'brakes.fluid-level', 'brakes.lines', 'brakes.breakaway-cable', 'brakes.breakaway-battery', 'brakes.parking', 'brakes.controller', 'brakes.chocks',
  'lights.lamp', 'lights.reflector', 'lights.connector', 'lights.number-plate', 'lights.flash-rate', 'lights.wiring-run',
  'tie-down.webbing', 'tie-down.hooks', 'tie-down.label', 'tie-down.tension', 'tie-down.bow-lead', 'tie-down.transom-lead', 'tie-down.total', 'tie-down.number',
  'tie-down.engine', 'tie-down.loose-gear', 'tie-down.cover', 'tie-down.drain-plug',
  'after-use.rinse', 'after-use.brake-flush', 'after-use.service-record',
])
