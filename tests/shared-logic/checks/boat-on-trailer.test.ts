import { describe, expect, it } from 'vitest'
import { catalogue } from '../../../shared-logic/checks/catalogue'
import type { Rig } from '../../../shared-logic/rig/rig'
import { askedChecks } from '../../../shared-logic/survey/assess'

const askedOf = (rig: Partial<Rig>): Set<string> =>
  new Set(askedChecks(catalogue, { rig: { name: 'Rig', trailer: {}, ...rig }, ruleBook: 'us', purpose: 'purchase' }).map(({ check }) => check.id))
const ofTheBoat = ['tie-down.tension', 'tie-down.total', 'tie-down.chafe', 'tie-down.engine', 'winch.second-tie', 'winch.bow-stop', 'bunks.bearing', 'bunks.hull-marks']

describe('a trailer surveyed without a boat', () => {
  it('is asked nothing of a boat once the register says that there is none', () => {
    const asked = askedOf({ trailer: { carriesBoat: false } })
    expect(ofTheBoat.filter((id) => asked.has(id))).toEqual([])
    // Straps sold with the trailer are looked at all the same.
    expect(['wheels.tread', 'tie-down.webbing', 'bunks.surface'].filter((id) => !asked.has(id))).toEqual([])
  })
  it.each([['not known', {}], ['said to be there', { trailer: { carriesBoat: true } }], ['described', { boat: {} }]] as const)('is asked all of it while the boat is %s', (_, rig) => {
    const asked = askedOf(rig)
    expect(ofTheBoat.filter((id) => !asked.has(id))).toEqual([])
  })
})
