import { describe, expect, it } from 'vitest'
import { en } from '../../../shared-logic/words/en'
import { sayEquipment } from '../../../shared-logic/words/say-equipment'

describe('a rig’s equipment in one line', () => {
  it('tells a tandem with surge brakes from a light single axle', () => {
    const tandem = { name: 'a', trailer: { axleCount: 2, frame: 'galvanized steel', hubLubrication: 'oil bath', brakes: 'surge', maximumMassKg: 2500 }, boat: { name: 'Mergus' } } as const
    expect(sayEquipment(en, tandem, 'metric')).toBe('Tandem, galvanized steel, oil-bath hubs, surge brakes, up to 2,500 kg, with Mergus')
    const light = { name: 'b', trailer: { axleCount: 1, frame: 'aluminium', brakes: 'none' } } as const
    expect(sayEquipment(en, light, 'metric')).toBe('Single axle, aluminium, no brakes')
  })

  it('says that nothing is described rather than leaving the line empty', () => {
    expect(sayEquipment(en, { name: 'c', trailer: {} }, 'metric')).toBe('Equipment not described yet')
  })
})
