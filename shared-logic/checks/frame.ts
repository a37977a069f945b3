import type { Check } from './check'
import { frameCoatingChecks } from './frame/coating'
import { frameCorrosionChecks } from './frame/corrosion'
import { frameFittingChecks } from './frame/fittings'
import { frameStructureChecks } from './frame/structure'

/** Frame: structure, corrosion, coating, and what is bolted to it. */
export const frameChecks: readonly Check[] = [...frameStructureChecks, ...frameCorrosionChecks, ...frameCoatingChecks, ...frameFittingChecks]
