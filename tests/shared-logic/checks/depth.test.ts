import { describe, expect, it } from 'vitest'
import { catalogue } from '../../../shared-logic/checks/catalogue'
import { walkRoundChecks } from '../../../shared-logic/checks/depth'
import type { Rig } from '../../../shared-logic/rig/rig'
import { askedChecks } from '../../../shared-logic/survey/assess'
import { stations } from '../../../shared-logic/survey/station'

const tandem: Rig = { name: 'tandem', trailer: { axleCount: 2, frame: 'galvanized steel', hubLubrication: 'oil bath', brakes: 'surge', brakeForm: 'disc', suspension: 'leaf springs', supports: 'bunks' }, boat: {} }
const asked = (purpose: 'purchase' | 'before tow') => askedChecks(catalogue, { rig: tandem, ruleBook: 'us', purpose })

describe('a walk-round before a tow', () => {
  it('names only checks that there are', () => {
    const known = new Set(catalogue.map((check) => check.id))
    expect([...walkRoundChecks].filter((id) => !known.has(id))).toEqual([])
  })
  it('still stands at every station', () => {
    expect(new Set(asked('before tow').map(({ check }) => check.station))).toEqual(new Set(stations))
  })
  it('asks less than half of what a survey before a purchase asks, and nothing else', () => {
    const thorough = new Set(asked('purchase').map(({ check, position }) => `${check.id} ${position}`))
    const brief = asked('before tow').map(({ check, position }) => `${check.id} ${position}`)
    expect(brief.length).toBeLessThan(thorough.size / 2)
    expect(brief.every((place) => thorough.has(place))).toBe(true)
  })
})
