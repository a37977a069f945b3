import { defaultSettings, type Settings } from '../../shared-logic/survey/settings'
import type { UnitSystem } from '../../shared-logic/units/quantity'
import { useQueryOf } from '../client/use-procedure'

/** The yard's settings; the defaults until they have been read. */
export const useSettings = (): Settings => useQueryOf('settings.get', {}).data?.settings ?? defaultSettings

/** Which units this reader thinks in. */
export const useUnits = (): UnitSystem => useSettings().units
