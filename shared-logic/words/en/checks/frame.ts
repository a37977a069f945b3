import type { StationCheckWords } from '../../check-words'
import { frameCoatingWords } from './frame/coating'
import { frameCorrosionWords } from './frame/corrosion'
import { frameFittingWords } from './frame/fittings'
import { frameStructureWords } from './frame/structure'

export const frameWords: StationCheckWords = { ...frameStructureWords, ...frameCorrosionWords, ...frameCoatingWords, ...frameFittingWords }
