import { describe, expect, it } from 'vitest'
import { catalogue } from '../../../shared-logic/checks/catalogue'
import type { Check } from '../../../shared-logic/checks/check'
import { walkRoundChecks } from '../../../shared-logic/checks/depth'
import type { Rig } from '../../../shared-logic/rig/rig'
import { answerableChecks, askedChecks, assess, moreOnceRecorded } from '../../../shared-logic/survey/assess'
import { placeKey } from '../../../shared-logic/survey/keys'
import { stations } from '../../../shared-logic/survey/station'

const tandem: Rig = { name: 'tandem', trailer: { axleCount: 2, frame: 'galvanized steel', hubLubrication: 'oil bath', brakes: 'surge', brakeForm: 'disc', suspension: 'leaf springs', supports: 'bunks', winch: 'hand, strap' }, boat: {} }
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

const unknown: Rig = { name: 'nothing recorded', trailer: { axleCount: 2 }, boat: {} }
const walkOf = (rig: Rig, answers?: ReadonlyMap<string, unknown>) => askedChecks(catalogue, { rig, ruleBook: 'us', purpose: 'before tow' }, answers)
const idsOf = (asked: readonly { readonly check: Check }[]): Set<string> => new Set(asked.map(({ check }) => check.id))
const kinds = ['winch.kind', 'bunks.kind', 'axles.kind', 'hubs.kind', 'brakes.kind']

describe('a walk-round of a rig whose gear is not recorded', () => {
  it('asks which kind it is, in place of the checks of every kind', () => {
    const ids = idsOf(walkOf(unknown))
    expect(kinds.filter((id) => !ids.has(id))).toEqual([])
    expect(['hubs.oil-level', 'axles.leaf-springs', 'axles.torsion-arms', 'axles.coil-springs', 'winch.cable', 'bunks.rollers', 'brakes.actuator-travel', 'brakes.controller'].filter((id) => ids.has(id))).toEqual([])
  })
  it('still asks what every kind has', () => {
    const ids = idsOf(walkOf(unknown))
    expect(['hubs.seal', 'hubs.heat', 'axles.mounting', 'winch.hook', 'winch.gears', 'brakes.breakaway-cable', 'brakes.required', 'bunks.bearing'].filter((id) => !ids.has(id))).toEqual([])
  })
  it('is more than thirty checks shorter than one that asked of every kind', () => {
    const all = answerableChecks(catalogue, { rig: unknown, ruleBook: 'us', purpose: 'before tow' })
    expect(walkOf(unknown).length).toBeLessThan(all.length - 30)
    expect([...idsOf(walkOf(unknown))].filter((id) => !idsOf(all).has(id))).toEqual([])
  })
  it('asks no kind that is recorded, and none in a thorough survey, which asks everything', () => {
    const known: Rig = { ...unknown, trailer: { ...unknown.trailer, winch: 'hand, strap', supports: 'bunks', suspension: 'leaf springs', hubLubrication: 'grease', brakes: 'none' } }
    expect(kinds.filter((id) => idsOf(walkOf(known)).has(id))).toEqual([])
    const thorough = idsOf(askedChecks(catalogue, { rig: unknown, ruleBook: 'us', purpose: 'purchase' }))
    expect(kinds.filter((id) => thorough.has(id))).toEqual([])
    expect(thorough.has('hubs.oil-level') && thorough.has('brakes.magnets')).toBe(true)
  })
  it('counts the kind as not seen, told or not', () => {
    const facts = { rig: unknown, ruleBook: 'us', purpose: 'before tow', surveyDate: '2026-11-25' } as const
    const said = assess(catalogue, { ...facts, answers: new Map([[placeKey('hubs.kind', 'rig'), { values: { condition: 'oil bath' } }]]) })
    expect(said.find(({ check }) => check.id === 'hubs.kind')).toMatchObject({ verdict: 'not seen', open: false })
    expect(assess(catalogue, { ...facts, answers: new Map() }).find(({ check }) => check.id === 'hubs.kind')).toMatchObject({ verdict: 'not seen', open: true })
  })
  it('keeps what was answered all the same', () => {
    expect(idsOf(walkOf(unknown, new Map([[placeKey('hubs.oil-level', 'axle 1 left'), {}]]))).has('hubs.oil-level')).toBe(true)
  })
  it('tells how many more are asked once the record has it: two of oil at each of four hubs', () => {
    const facts = { rig: unknown, ruleBook: 'us', purpose: 'before tow' } as const
    const of = (id: string) => walkOf(unknown).filter(({ check }) => check.id === id).map((asked) => moreOnceRecorded(catalogue, asked, facts))
    expect(of('hubs.kind')).toEqual([8])
    expect(of('hubs.seal')).toEqual([0, 0, 0, 0])
  })
})
