import type { InstrumentDrawing } from '../../checks/check'
import type { Drawing, Shape } from '../drawing'
import { fittings } from './fittings'
import { actuatorTravel, ballGauge, lining, pressureGauge, rotor, sightGlass, strapWidth, treadGauge } from './gauges'

const draw: Readonly<Record<InstrumentDrawing, (value: number | undefined) => Shape[]>> = {
  ...fittings,
  'sight glass': sightGlass,
  'strap width': strapWidth,
  'tread gauge': treadGauge,
  'actuator travel': actuatorTravel,
  lining,
  'ball gauge': ballGauge,
  'pressure gauge': pressureGauge,
  rotor,
}

/** Where a drawn instrument can be dragged: SI bounds and step of what it shows. */
export interface DragRange {
  readonly min: number
  readonly max: number
  readonly step: number
}

export const dragRanges: Readonly<Partial<Record<InstrumentDrawing, DragRange>>> = {
  'sight glass': { min: 0, max: 1, step: 0.05 },
  'strap width': { min: 0, max: 0.05, step: 0.001 },
  'tread gauge': { min: 0, max: 0.012, step: 0.0001 },
  'actuator travel': { min: 0, max: 0.1, step: 0.001 },
  lining: { min: 0, max: 0.012, step: 0.0001 },
  'ball gauge': { min: 0.045, max: 0.062, step: 0.0001 },
  'pressure gauge': { min: 0, max: 700_000, step: 5_000 },
  rotor: { min: 0.004, max: 0.026, step: 0.0001 },
}

/** The instrument or fitting a check is about, showing `value` (SI) where it shows one. */
export const instrumentDrawing = (name: InstrumentDrawing, value?: number): Drawing => ({
  viewBox: [0, 0, 240, 180],
  shapes: draw[name](value),
  places: [],
  toScale: false,
})
