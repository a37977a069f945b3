import { describe, expect, it } from 'vitest'
import { hubChecks } from '../../../shared-logic/checks/hubs'
import type { Rig } from '../../../shared-logic/rig/rig'
import { choiceCheck, failed, passed } from '../../../shared-logic/checks/builders'
import type { Check } from '../../../shared-logic/checks/check'
import type { Answer } from '../../../shared-logic/survey/answer'
import { assess } from '../../../shared-logic/survey/assess'
import { placeKey } from '../../../shared-logic/survey/keys'
import { checkAtPosition, firstOpen, nextCheck, nextOpen, previousCheck, sameForOthers, stopsOf, whereToResume } from '../../../shared-logic/survey/walk'

const rig: Rig = { name: 'Tandem', trailer: { axleCount: 2, hubLubrication: 'oil bath' } }
const winchChecks: readonly Check[] = [
  choiceCheck({ id: 'test.winch', station: 'winch', positions: 'once', outcomes: { sound: passed, worn: failed('before it is towed') }, sources: [{ kind: 'common practice' }] }),
]
const oil = hubChecks.find((check) => check.id === 'hubs.oil-condition')
const level = hubChecks.find((check) => check.id === 'hubs.oil-level')
if (!oil || !level) throw new Error('the catalogue lost its oil checks')
const small: readonly Check[] = [...winchChecks, oil, level]

const walkOf = (answers: Record<string, Answer> = {}) =>
  assess(small, { rig, ruleBook: 'us', purpose: 'purchase', surveyDate: '2026-11-25', answers: new Map(Object.entries(answers)) })
const chosen = (condition: string): Answer => ({ values: { condition } })
const key = placeKey
const winch = key('test.winch', 'rig')
const oilAt = (position: string) => key('hubs.oil-condition', position)
const levelAt = (position: string) => key('hubs.oil-level', position)

const at = (walk: ReturnType<typeof walkOf>, wanted: string) => {
  const found = walk.find((each) => each.key === wanted)
  if (!found) throw new Error(wanted)
  return found
}

describe('the order of the walk', () => {
  it('goes from the winch to the first hub, and back', () => {
    const walk = walkOf()
    expect(nextCheck(walk, winch)?.key).toBe(oilAt('axle 1 left'))
    expect(previousCheck(walk, oilAt('axle 1 left'))?.key).toBe(winch)
  })
  it('ends at both ends instead of going round', () => {
    const walk = walkOf()
    expect(previousCheck(walk, winch)).toBeUndefined()
    expect(nextCheck(walk, levelAt('axle 2 right'))).toBeUndefined()
  })
  it('goes on to the next open check past answered ones', () => {
    const walk = walkOf({ [oilAt('axle 1 left')]: chosen('clear'), [oilAt('axle 1 right')]: chosen('clear') })
    expect(nextOpen(walk, winch)?.key).toBe(oilAt('axle 2 left'))
  })
  it('looks again from the start for what was left open behind', () => {
    const walk = walkOf()
    expect(nextOpen(walk, levelAt('axle 2 right'))?.key).toBe(winch)
  })
  it('has nowhere to go on to when only the check stood at is open', () => {
    const one = assess(winchChecks, { rig, ruleBook: 'us', purpose: 'purchase', surveyDate: '2026-11-25', answers: new Map() })
    expect(nextOpen(one, winch)).toBeUndefined()
  })
  it('begins at the first open check', () => {
    expect(firstOpen(walkOf({ [winch]: chosen('sound') }))?.key).toBe(oilAt('axle 1 left'))
  })
  it('comes back to the check last stood at, though it is answered', () => {
    expect(whereToResume(walkOf({ [winch]: chosen('sound') }), winch)?.key).toBe(winch)
  })
  it('comes back to the first open check when the one last stood at is asked no more', () => {
    expect(whereToResume(walkOf({ [winch]: chosen('sound') }), key('gone', 'rig'))?.key).toBe(oilAt('axle 1 left'))
  })
  it('stays at its station when the rig’s record has done away with the check last stood at', () => {
    expect(whereToResume(walkOf(), key('hubs.kind', 'rig'))?.key).toBe(oilAt('axle 1 left'))
    expect(whereToResume(walkOf(), key('brakes.kind', 'rig'))?.key).toBe(winch)
  })
})

describe('stations as stops', () => {
  it('names only stations with checks, numbered in walking order', () => {
    expect(stopsOf(walkOf()).map(({ station, number }) => [station, number])).toEqual([['winch', 1], ['hubs', 2]])
  })
  it('counts what is asked, what is open and the worst verdict of each', () => {
    const [, hubs] = stopsOf(walkOf({ [oilAt('axle 1 left')]: chosen('milky'), [oilAt('axle 1 right')]: chosen('clear') }))
    expect(hubs?.summary).toMatchObject({ asked: 8, open: 6, verdict: 'fail' })
  })
  it('steps in at the first open check of the station', () => {
    const [, hubs] = stopsOf(walkOf({ [oilAt('axle 1 left')]: chosen('clear') }))
    expect(hubs?.entry.key).toBe(oilAt('axle 1 right'))
  })
  it('steps in at the first check when nothing is open', () => {
    const [first] = stopsOf(walkOf({ [winch]: chosen('worn') }))
    expect(first?.entry.key).toBe(winch)
  })
})

describe('tapping a hub on the drawing', () => {
  it('opens the first open check at that hub', () => {
    const walk = walkOf({ [oilAt('axle 2 left')]: chosen('clear') })
    expect(checkAtPosition(walk, 'axle 2 left', 'hubs')?.key).toBe(levelAt('axle 2 left'))
  })
  it('finds nothing where nothing is asked', () => {
    expect(checkAtPosition(walkOf(), 'spare', 'hubs')).toBeUndefined()
  })
})

describe('the same answer for the other positions', () => {
  it('is offered from the hub just answered to the three still open', () => {
    const walk = walkOf({ [oilAt('axle 1 left')]: chosen('clear') })
    const offer = sameForOthers(walk, at(walk, oilAt('axle 1 right')))
    expect(offer?.from.position).toBe('axle 1 left')
    expect(offer?.to.map((each) => each.position)).toEqual(['axle 1 right', 'axle 2 left', 'axle 2 right'])
  })
  it('hands on the choice, and never the note or an overrule', () => {
    const walk = walkOf({ [oilAt('axle 1 left')]: { ...chosen('clear'), note: 'cap scratched', overrule: { verdict: 'advisory', reason: 'smells burnt' } } })
    expect(sameForOthers(walk, at(walk, oilAt('axle 1 left')))?.answer).toEqual({ values: { condition: 'clear' } })
  })
  it.each(['dark', 'milky'])('is never offered for a fault: nobody vouches for %s oil in a hub not looked at', (condition) => {
    const walk = walkOf({ [oilAt('axle 1 left')]: chosen(condition) })
    expect(sameForOthers(walk, at(walk, oilAt('axle 1 left')))).toBeUndefined()
  })
  it('is never offered for a reading', () => {
    const walk = walkOf({ [levelAt('axle 1 left')]: { values: { level: 0.7 } } })
    expect(sameForOthers(walk, at(walk, levelAt('axle 1 left')))).toBeUndefined()
  })
  it('is not offered from a hub that was set aside', () => {
    const walk = walkOf({ [oilAt('axle 1 left')]: { values: {}, aside: { as: 'not seen', reason: 'Under the boat' } } })
    expect(sameForOthers(walk, at(walk, oilAt('axle 1 left')))).toBeUndefined()
  })
  it('is not offered when every hub is answered', () => {
    const all = Object.fromEntries(['axle 1 left', 'axle 1 right', 'axle 2 left', 'axle 2 right'].map((position) => [oilAt(position), chosen('clear')]))
    const walk = walkOf(all)
    expect(sameForOthers(walk, at(walk, oilAt('axle 1 left')))).toBeUndefined()
  })
})
