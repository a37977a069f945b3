import { axleBeamChecks } from './axles/beam'
import { axleGeometryChecks } from './axles/geometry'
import { leafSpringChecks } from './axles/leaf-springs'
import { torsionAndCoilChecks } from './axles/torsion-and-coil'
import type { Check } from './check'

/** Axles and suspension. */
export const axleChecks: readonly Check[] = [...axleBeamChecks, ...leafSpringChecks, ...torsionAndCoilChecks, ...axleGeometryChecks]
