import type { Rig } from '../rig/rig'
import { formatQuantity } from '../units/convert'
import type { UnitSystem } from '../units/quantity'
import type { Words } from './en'
import { say } from './say'

const boatName = ({ boat }: Rig): string | undefined => boat?.name ?? ([boat?.maker, boat?.model].filter((part) => part !== undefined).join(' ') || undefined)

/** One line of what kind of rig it is: 'Tandem, galvanized steel, oil-bath hubs, surge brakes, up to 2,500 kg'. What is not known is left out. */
export const sayEquipment = (words: Words, rig: Rig, units: UnitSystem): string => {
  const { equipment } = words.screens.yard
  const { axleCount, frame, hubLubrication, brakes, maximumMassKg } = rig.trailer
  const boat = boatName(rig)
  const parts = [
    axleCount === undefined ? undefined : equipment.axles[axleCount],
    frame,
    hubLubrication && equipment.hubs[hubLubrication],
    brakes && equipment.brakes[brakes],
    maximumMassKg === undefined ? undefined : say(equipment.upTo, { mass: formatQuantity('mass', maximumMassKg, units) }, units),
    boat === undefined ? undefined : say(equipment.withBoat, { boat }, units),
  ].filter((part) => part !== undefined)
  const line = parts.join(', ')
  return line === '' ? equipment.unknown : line.charAt(0).toUpperCase() + line.slice(1)
}
