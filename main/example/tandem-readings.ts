import type { Answer } from '../../shared-logic/survey/answer'

type Values = Answer['values']

const inch = (inches: number): number => Math.round(inches * 25.4 * 10) / 10_000
const placardPa = 448_159

/** What was measured on the tandem where nothing was found, by check; SI. Invented. */
export const tandemReadings: Readonly<Record<string, Values>> = {
  'papers.loaded-mass': { basis: 'weighed', loaded: 2_690 },
  'papers.coupling-share': { basis: 'weighed', coupling: 240, total: 2_690 },
  'papers.axle-load': { axles: 2_450 },
  'papers.axle-ratings': { coupling: 240 },
  'coupler.class': { marking: 'marked', capacity: 3_175 },
  'coupler.level': { stance: 'level', height: 0.48 },
  'coupler.ball-size': { socket: inch(2), ball: inch(2) },
  'coupler.ball-wear': { diameter: inch(2), surface: 'smooth' },
  'coupler.chain-strength': { marking: 'breaking strength', strength: 48_000 },
  'winch.capacity': { marking: 'marked', capacity: 1_450 },
  'frame.corrosion': { spots: [] },
  'axles.tracking': { offset: 0.004 },
  'axles.square': { left: 5.6, right: 5.602 },
  'axles.ride-height': { left: 0.62, right: 0.622 },
  'hubs.oil-level': { level: 0.65 },
  'hubs.heat': { hub: 33, others: 32, air: 18 },
  'wheels.tyre-size': { size: 'ST205/75R14' },
  'wheels.load': { marking: 'as the record', against: 'load worked out' },
  'wheels.tread': { depth: 0.0056 },
  'wheels.age': { code: 'read', date: '1123' },
  'wheels.pressure': { pressure: placardPa, state: 'cold' },
  'wheels.nuts': { missing: 0, loose: 0 },
  'wheels.torque': { figure: 'known', makers: 136, found: 136 },
  'brakes.surge-match': { vehicle: 'known', rating: 3_080 },
  'brakes.breakaway-hold': { held: 900 },
  'brakes.fluid-boiling-point': { grade: 'DOT 3', boiling: 218 },
  'brakes.fluid-age': { record: 'date known', changed: '2025-10-04', water: 'salt water' },
  'brakes.lining': { thickness: 0.0062, fixing: 'bonded' },
  'brakes.disc-thickness': { mark: 'readable mark', limit: 0.0095, found: 0.0108 },
  'lights.flash-rate': { rate: 84 },
  'lights.heights': { lamps: 0.66, reflectors: 0.61 },
  'lights.identification-cluster': { lamps: 3, spacing: 0.203 },
  'lights.voltage-drop': { plug: 12.6, lamp: 12.3 },
  'tie-down.label': { marking: 'working load limit', strength: 6_670 },
  'tie-down.total': { boat: 2_030, bow: 6_670, left: 6_670, right: 6_670, route: 'none' },
  'tie-down.number': { count: 4, blocked: 'blocked' },
  'after-use.service-record': { record: 'seen', last: '2025-10-04' },
}

/** What a reading was taken with, by check. */
export const tandemInstruments: Readonly<Record<string, string>> = {
  'papers.loaded-mass': 'Public weighbridge, ticket seen',
  'papers.axle-load': 'Public weighbridge, ticket seen',
  'papers.axle-ratings': 'Coupling load scale',
  'papers.coupling-share': 'Coupling load scale',
  'coupler.ball-size': 'Vernier caliper',
  'coupler.ball-wear': 'Vernier caliper',
  'axles.square': 'Tape, 8 m',
  'hubs.heat': 'Infrared thermometer, after 20 km',
  'wheels.tread': 'Digital depth gauge',
  'wheels.pressure': 'Dial gauge, checked this spring',
  'wheels.torque': 'Torque wrench, click type',
  'brakes.fluid-boiling-point': 'Boiling-point tester',
  'brakes.lining': 'Steel rule',
  'brakes.actuator-travel': 'Steel rule',
  'brakes.disc-thickness': 'Micrometer',
  'lights.voltage-drop': 'Multimeter',
  'frame.corrosion': 'Photograph with a steel rule, depth gauge, coating gauge',
}
