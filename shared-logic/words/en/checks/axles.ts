import type { StationCheckWords } from '../../check-words'
import { axleBeamWords } from './axles/beam'
import { axleGeometryWords } from './axles/geometry'
import { leafSpringWords } from './axles/leaf-springs'
import { torsionAndCoilWords } from './axles/torsion-and-coil'

export const axleWords: StationCheckWords = { ...axleBeamWords, ...leafSpringWords, ...torsionAndCoilWords, ...axleGeometryWords }
