import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { degreeOfRusting, protectionRating, rustGrade } from '../../../shared-logic/corrosion/area-grades'
import { componentRows, defaultComponentOf } from '../../../shared-logic/corrosion/components'
import { compareGravity, findingKeys, rowOf } from '../../../shared-logic/corrosion/findings'
import { gradeSpot, gradeSpots, gravestFirst } from '../../../shared-logic/corrosion/grade-spot'
import { faultsOfSpots } from '../../../shared-logic/corrosion/spot-faults'
import { positionsOf } from '../../../shared-logic/checks/positions'
import { rememberedIndex } from '../../../shared-logic/corrosion/galvanic'
import { spotComponents, spotMaterials, type Spot } from '../../../shared-logic/survey/spot'
import { byWhens, compareVerdicts } from '../../../shared-logic/survey/verdict'
import { anySpot } from './any-spot'

const painted: Spot = { id: 'a', place: 'left rail', material: 'painted steel', kind: 'red rust', component: 'rail' }
const urgencyOf = (by: (typeof byWhens)[number] | undefined): number => (by === undefined ? byWhens.length : byWhens.indexOf(by))

describe('the table of findings', () => {
  it('stands in order of gravity: by verdict, then by when it is due', () => {
    const rows = findingKeys.map(rowOf)
    const wrong = rows.slice(1).flatMap((row, index) => {
      const before = rows[index]
      const order = before === undefined ? 0 : compareVerdicts(before.verdict, row.verdict) || urgencyOf(row.by) - urgencyOf(before.by)
      return order < 0 ? [findingKeys[index + 1]] : []
    })
    expect(wrong).toEqual([])
  })

  it('has a date and a remedy for every finding to act on, and for no other', () => {
    const acted = findingKeys.filter((key) => rowOf(key).verdict === 'advisory' || rowOf(key).verdict === 'fail')
    expect(acted.filter((key) => rowOf(key).by === undefined || rowOf(key).remedy === 'none')).toEqual([])
    expect(findingKeys.filter((key) => !acted.includes(key) && (rowOf(key).by !== undefined || rowOf(key).remedy !== 'none'))).toEqual([])
  })

  it('fails nothing on the state of a coating, and nothing on what is only remembered', () => {
    const fails = findingKeys.filter((key) => rowOf(key).verdict === 'fail')
    expect(fails.filter((key) => rowOf(key).part === 'coating')).toEqual([])
    expect(fails.filter((key) => rowOf(key).sources.every(({ kind }) => kind === 'from memory'))).toEqual([])
  })
})

describe('two results apart', () => {
  it('12 % rust, 2 % of the wall gone: the coating is an advisory, the metal passes', () => {
    const graded = gradeSpot({ ...painted, share: 0.12, wallM: 0.004, remainingM: 0.00392 }, [])
    expect([graded.coating.verdict, graded.structure.verdict, graded.verdict]).toEqual(['advisory', 'pass', 'advisory'])
  })

  it('hardly any rust, but a deep pit: the coating passes, the metal fails', () => {
    const graded = gradeSpot({ ...painted, kind: 'pitting', share: 0.001, wallM: 0.004, pitDepthM: 0.002 }, [])
    expect([graded.coating.verdict, graded.structure.verdict, graded.verdict, graded.gravest]).toEqual(['pass', 'fail', 'fail', 'deep pit'])
  })

  it('a depth that was not measured is not seen, never a pass', () => {
    expect(gradeSpot({ ...painted, share: 0.001 }, []).structure).toMatchObject({ finding: 'depth not measured', verdict: 'not seen' })
  })

  it('what is not measured has no grade', () => {
    const graded = gradeSpot({ ...painted, areaM2: 0.001 }, [])
    expect(graded).toMatchObject({ share: undefined, gravest: 'not measured' })
    expect(graded.coating.grades).toEqual([])
  })

  it('unlike metals at a pit are told besides the pit', () => {
    const graded = gradeSpot({ ...painted, material: 'aluminium', kind: 'galvanic', touches: 'stainless steel', pitDepthM: 0.0004, wallM: 0.004 }, [])
    expect(graded.structure).toMatchObject({ finding: 'aluminium pits', also: ['galvanic'] })
  })

  it('thin zinc is told besides the rust on it', () => {
    expect(gradeSpot({ ...painted, material: 'galvanized steel', share: 0.003, wallM: 0.004, coatingReadingsM: [40e-6] }, []).coating).toMatchObject({ finding: 'red rust on zinc', also: ['thin zinc'] })
  })

  it('a rusted-through coupler is replaced, a rail is welded', () => {
    const remedyOf = (component: Spot['component']): string => gradeSpot({ ...painted, kind: 'hole', component }, []).structure.remedy
    expect([remedyOf('coupler'), remedyOf('rail')]).toEqual(['replace', 'repair by welding'])
  })
})

describe('which scale for which surface', () => {
  const scalesOf = (material: Spot['material'], kind: Spot['kind'] = 'red rust'): string[] => gradeSpot({ ...painted, material, kind, share: 0.02 }, []).coating.grades.map(({ scale }) => scale)

  it.each([
    ['painted steel', ['ISO 4628-3', 'ASTM D610']], ['bare steel', ['ISO 4628-3', 'ASTM D610']], ['painted over zinc', ['ISO 4628-3']], ['galvanized steel', ['ISO 10289']], ['zinc-plated steel', ['ISO 10289']], ['aluminium', []],
  ] as const)('%s is graded by %j', (material, scales) => {
    expect(scalesOf(material)).toEqual(scales)
  })

  it('white product is appearance only, blisters are no rust, welds are rated apart', () => {
    expect(scalesOf('galvanized steel', 'white product')).toEqual(['ISO 10289, appearance'])
    expect(scalesOf('painted steel', 'blister')).toEqual([])
    expect(scalesOf('painted steel', 'weld')).toEqual(['IMO MSC.1/Circ.1330'])
  })
})

describe('components', () => {
  it('mudguard and lamp bracket bear no load; every other part is taken to', () => {
    expect(spotComponents.filter((component) => !componentRows[component].bearsLoad)).toEqual(['mudguard', 'lamp bracket'])
  })

  it('every part the check asks about has its own component', () => {
    const rigs = [{ axleCount: 2, supports: 'bunks and rollers' as const }, {}]
    const positions = rigs.flatMap((trailer) => positionsOf('corroding part', { name: 'Rig', trailer }, 'us'))
    expect(positions).toEqual(expect.arrayContaining(['tongue', 'left rail', 'winch post', 'bunk brackets', 'roller brackets', 'axle 1', 'axle 2', 'all axles']))
    expect(positions.filter((position) => defaultComponentOf(position) === 'other')).toEqual([])
  })

  it('a roller trailer is asked for roller brackets, one whose supports are not known for bunk brackets', () => {
    const of = (supports?: 'rollers'): readonly string[] => positionsOf('corroding part', { name: 'Rig', trailer: { ...(supports && { supports }) } }, 'eu')
    expect(of('rollers')).not.toContain('bunk brackets')
    expect(of('rollers')).toContain('roller brackets')
    expect(of()).toContain('bunk brackets')
  })

  it('a spot that names none lies on the part it was asked at', () => {
    expect(gradeSpot({ id: 'a', place: 'x', material: 'painted steel', kind: 'hole' }, [], { position: 'axle 2' })).toMatchObject({ component: 'axle', structure: { remedy: 'replace' } })
  })
})

describe('spots of one place', () => {
  const here = { ...painted, areaM2: 0.002, faceAreaM2: 0.35 }
  it('add up, with their uncertainties; the smallest face named counts', () => {
    const both = [{ ...here, areaUncertaintyM2: 0.0002 }, { ...here, id: 'b', place: 'LEFT rail', areaUncertaintyM2: 0.0003, faceAreaM2: 0.4 }]
    const share = gradeSpots(both)[0]?.share
    expect([share?.value, share?.low, share?.high]).toEqual([0.004, 0.0035, 0.0045].map((area) => expect.closeTo(area / 0.35, 9)))
  })

  it('of another material, at a weld, or repaired, do not', () => {
    const others: Spot[] = [{ ...here, id: 'b', material: 'bare steel' }, { ...here, id: 'c', kind: 'weld' }, { ...here, id: 'd', state: 'repaired' }, { ...here, id: 'e', kind: 'blister' }]
    expect(gradeSpot(here, [here, ...others])).toMatchObject({ counted: 1, share: { value: expect.closeTo(0.002 / 0.35, 9) } })
  })

  it('shares measured on the face add to areas', () => {
    const shared: Spot = { ...painted, id: 'b', share: 0.01 }
    expect(gradeSpot(here, [here, shared]).share?.value).toBeCloseTo(0.002 / 0.35 + 0.01, 9)
  })

  it('one that was not measured leaves the whole unknown', () => {
    expect(gradeSpot(here, [here, { ...painted, id: 'b' }]).share).toBeUndefined()
  })
})

const grades = (share: number): { readonly degree: number; readonly grade: number; readonly rating: number } => ({ degree: degreeOfRusting(share * 100), grade: rustGrade(share * 100), rating: protectionRating(share * 100) })

describe('laws of grading', () => {
  it('more rust never grades better, on any scale', () => {
    fc.assert(fc.property(fc.double({ min: 0, max: 1, noNaN: true }), fc.double({ min: 0, max: 1, noNaN: true }), (a, b) => {
      const [less, more] = [grades(Math.min(a, b)), grades(Math.max(a, b))]
      expect(more.degree >= less.degree && more.grade <= less.grade && more.rating <= less.rating).toBe(true)
    }))
  })

  it('a larger, deeper or thinner spot, all else alike, is never found milder', () => {
    fc.assert(fc.property(anySpot, fc.double({ min: 0, max: 1, noNaN: true }), (spot, by) => {
      const { areaM2, faceAreaM2, share, pitDepthM, wallM, remainingM } = spot
      const worse: Spot = {
        ...spot,
        ...(areaM2 !== undefined && faceAreaM2 !== undefined && { areaM2: areaM2 + by * Math.max(0, Math.min(20, faceAreaM2) - areaM2) }),
        ...(share !== undefined && { share: share + by * (1 - share) }),
        ...(pitDepthM !== undefined && wallM !== undefined && { pitDepthM: pitDepthM + by * (wallM - pitDepthM) }),
        ...(remainingM !== undefined && { remainingM: remainingM * (1 - by) }),
      }
      const [before, after] = [gradeSpot(spot, []), gradeSpot(worse, [])]
      expect(compareVerdicts(after.verdict, before.verdict)).toBeGreaterThanOrEqual(0)
      expect(compareGravity(after.coating.finding, before.coating.finding)).toBeLessThanOrEqual(0)
      expect(compareGravity(after.structure.finding, before.structure.finding)).toBeLessThanOrEqual(0)
    }), { numRuns: 2_000 })
  })

  it('a less certain measurement is never found milder', () => {
    fc.assert(fc.property(anySpot, fc.double({ min: 0, max: 1, noNaN: true }), (spot, more) => {
      const vague: Spot = spot.areaM2 === undefined ? spot : { ...spot, areaUncertaintyM2: (spot.areaUncertaintyM2 ?? 0) + more * spot.areaM2 }
      expect(compareGravity(gradeSpot(vague, []).gravest, gradeSpot(spot, []).gravest)).toBeLessThanOrEqual(0)
    }), { numRuns: 1_000 })
  })

  it('whatever share a coating shows, area alone never fails', () => {
    fc.assert(fc.property(fc.constantFrom(...spotMaterials), fc.constantFrom('red rust' as const, 'white product' as const, 'blister' as const, 'scale' as const, 'weld' as const), fc.double({ min: 0, max: 1, noNaN: true }), (material, kind, share) => {
      expect(gradeSpot({ ...painted, material, kind, share }, []).verdict).not.toBe('fail')
    }))
  })

  it('a repaired spot is sound, whatever was measured of it before', () => {
    fc.assert(fc.property(anySpot, (spot) => {
      expect(gradeSpot({ ...spot, state: 'repaired' }, [])).toMatchObject({ gravest: 'sound', verdict: 'pass', coating: { finding: 'sound' }, structure: { finding: 'sound metal' } })
    }))
  })

  it('the order spots are noted in does not change what the member comes to', () => {
    fc.assert(fc.property(fc.array(anySpot, { minLength: 1, maxLength: 5 }), (list) => {
      const spots = list.map((spot, index) => ({ ...spot, id: String(index) }))
      expect(gravestFirst(gradeSpots(spots))[0]?.gravest).toBe(gravestFirst(gradeSpots(spots.toReversed()))[0]?.gravest)
    }))
  })

  it('a couple that rests on a remembered figure never fails by itself, and says so', () => {
    fc.assert(fc.property(anySpot, (spot) => {
      const { structure } = gradeSpot({ ...spot, state: 'present', kind: 'galvanic', touches: 'galvanized steel', pitDepthM: undefined, remainingM: undefined }, [])
      expect(structure.verdict).not.toBe('fail')
      expect(structure.sources).toContain(rememberedIndex)
    }))
  })

  it('random spots make sense, so the laws are tested on what can be', () => {
    fc.assert(fc.property(anySpot, (spot) => faultsOfSpots([spot], (index) => `spots.${index}`).length === 0))
  })
})
