import sharp from 'sharp'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import type { Photograph } from '../../../shared-logic/survey/records'
import type { OpenedDesk } from '../../../main/desk/open'
import { ask, newFolder, open, placeWith, refusalOf, signAs, startSurvey, writePlainReport } from './yard-on-disk'

const hub = placeWith('choice')
const other = placeWith('reading')
const placeAt = ({ checkId, position }: { readonly checkId: string; readonly position: string }) => ({ checkId, position })
const nobody = '0197c000-0000-7000-8000-000000000009'

/** What happens while a report is being written. */
let meanwhile: () => Promise<unknown> = () => Promise.resolve()
let written = 0
let opened: OpenedDesk
beforeAll(async () => {
  opened = await open(newFolder(), {
    writeReport: async (...report) => {
      written += 1
      await meanwhile()
      return writePlainReport(...report)
    },
  })
})
afterAll(() => opened.close())

/** Another number, another picture. */
const picture = async (number: number): Promise<Uint8Array> =>
  new Uint8Array(await sharp({ create: { width: 16, height: 12, channels: 3, background: { r: number % 256, g: number >> 8, b: 7 } } }).png().toBuffer())

const withPhotographs = async (count: number, from = 0): Promise<{ surveyId: string; photographs: Photograph[] }> => {
  const { id: surveyId } = await startSurvey(opened)
  const photographs: Photograph[] = []
  for (let index = 0; index < count; index += 1)
    photographs.push((await ask(opened, 'photographs.add', { surveyId, fileName: `${index}.jpg` }, await picture(from + index))).photograph)
  return { surveyId, photographs }
}
const idsOf = (photographs: readonly Photograph[]): string[] => photographs.map(({ id }) => id)
const kept = async (surveyId: string): Promise<Photograph[]> => (await ask(opened, 'surveys.get', { surveyId })).photographs
describe('choosing what prints', () => {
  it('leaves out several at once, takes them in again, and answers them in the order asked', async () => {
    const { surveyId, photographs } = await withPhotographs(4)
    const [first, , third] = photographs
    if (first === undefined || third === undefined) throw new Error('no photographs')
    const { photographs: left } = await ask(opened, 'photographs.choose', { photographIds: [third.id, first.id], isPrinted: false })
    expect(left.map(({ id, isPrinted }) => [id, isPrinted])).toEqual([[third.id, false], [first.id, false]])
    expect((await kept(surveyId)).map(({ isPrinted }) => isPrinted)).toEqual([false, true, false, true])
    await ask(opened, 'photographs.choose', { photographIds: [third.id], isPrinted: true })
    expect((await kept(surveyId)).map(({ isPrinted }) => isPrinted)).toEqual([false, true, true, true])
  })
})

describe('assigning', () => {
  it('moves several to a check of the rig, and to none again', async () => {
    const { surveyId, photographs } = await withPhotographs(3, 10)
    const moved = await ask(opened, 'photographs.assign', { photographIds: idsOf(photographs), place: placeAt(hub) })
    expect(moved.photographs.map(({ checkId, position }) => ({ checkId, position }))).toEqual(photographs.map(() => placeAt(hub)))
    await ask(opened, 'photographs.assign', { photographIds: idsOf(photographs).slice(0, 1) })
    expect((await kept(surveyId)).map(({ checkId }) => checkId)).toEqual([undefined, hub.checkId, hub.checkId])
  })

  it('leaves a picture where it is when its twin stands at that place already', async () => {
    const { surveyId, photographs } = await withPhotographs(1, 20)
    const there = await ask(opened, 'photographs.add', { surveyId, ...placeAt(hub), fileName: 'twin.jpg' }, await picture(20))
    const { photographs: stays } = await ask(opened, 'photographs.assign', { photographIds: idsOf(photographs), place: placeAt(hub) })
    expect(stays.map(({ checkId }) => checkId)).toEqual([undefined])
    expect((await kept(surveyId)).filter(({ checkId }) => checkId === hub.checkId).map(({ id }) => id)).toEqual([there.photograph.id])
  })

  it('moves only the first of two twins that are to go to one place', async () => {
    const { surveyId, photographs } = await withPhotographs(1, 30)
    const twin = await ask(opened, 'photographs.add', { surveyId, ...placeAt(other), fileName: 'twin.jpg' }, await picture(30))
    const both = await ask(opened, 'photographs.assign', { photographIds: [...idsOf(photographs), twin.photograph.id], place: placeAt(hub) })
    expect(both.photographs.map(({ checkId }) => checkId)).toEqual([hub.checkId, other.checkId])
  })

  it('takes the place of one removed from there, which can still be had back', async () => {
    const { surveyId, photographs } = await withPhotographs(1, 40)
    const gone = await ask(opened, 'photographs.add', { surveyId, ...placeAt(hub), fileName: 'gone.jpg' }, await picture(40))
    await ask(opened, 'photographs.remove', { photographId: gone.photograph.id })
    const { photographs: moved } = await ask(opened, 'photographs.assign', { photographIds: idsOf(photographs), place: placeAt(hub) })
    expect(moved[0]?.checkId).toBe(hub.checkId)
    const { photograph: back } = await ask(opened, 'photographs.restore', { photographId: gone.photograph.id })
    expect(back.checkId).toBeUndefined()
    expect(await kept(surveyId)).toHaveLength(2)
  })

  it('refuses a place this rig is not asked about, and moves nothing', async () => {
    const { surveyId, photographs } = await withPhotographs(1, 50)
    expect((await refusalOf(opened, 'photographs.assign', { photographIds: idsOf(photographs), place: { checkId: hub.checkId, position: 'axle 9' } })).code).toBe('answer.not-asked')
    expect((await kept(surveyId))[0]?.checkId).toBeUndefined()
  })
})

describe('putting in order', () => {
  it('keeps the order wanted, and what was added meanwhile comes last', async () => {
    const { surveyId, photographs } = await withPhotographs(3, 60)
    const wanted = idsOf(photographs).toReversed()
    const late = await ask(opened, 'photographs.add', { surveyId, fileName: 'late.jpg' }, await picture(69))
    const { photographs: ordered } = await ask(opened, 'photographs.order', { surveyId, photographIds: wanted })
    expect(idsOf(ordered)).toEqual([...wanted, late.photograph.id])
    expect(idsOf(await kept(surveyId))).toEqual([...wanted, late.photograph.id])
    await ask(opened, 'photographs.order', { surveyId, photographIds: [late.photograph.id, ...wanted] })
    expect(idsOf(await kept(surveyId))).toEqual([late.photograph.id, ...wanted])
  })

  it('refuses one named twice, one of another survey and one removed, and changes nothing', async () => {
    const { surveyId, photographs } = await withPhotographs(2, 70)
    const elsewhere = await withPhotographs(1, 75)
    const ids = idsOf(photographs)
    const [first = ''] = ids
    expect((await refusalOf(opened, 'photographs.order', { surveyId, photographIds: [...ids, first] })).code).toBe('photograph.named-twice')
    expect((await refusalOf(opened, 'photographs.order', { surveyId, photographIds: [...idsOf(elsewhere.photographs), ...ids] })).code).toBe('photograph.not-found')
    await ask(opened, 'photographs.remove', { photographId: first })
    expect((await refusalOf(opened, 'photographs.order', { surveyId, photographIds: ids })).code).toBe('photograph.not-found')
    await ask(opened, 'photographs.restore', { photographId: first })
    expect(idsOf(await kept(surveyId))).toEqual(ids)
  })

  it('gives a photograph that comes back the place it had', async () => {
    const { surveyId, photographs } = await withPhotographs(3, 80)
    const wanted = idsOf(photographs).toReversed()
    await ask(opened, 'photographs.order', { surveyId, photographIds: wanted })
    await ask(opened, 'photographs.remove', { photographId: wanted[1] ?? '' })
    await ask(opened, 'photographs.restore', { photographId: wanted[1] ?? '' })
    expect(idsOf(await kept(surveyId))).toEqual(wanted)
  })
})

describe('turning', () => {
  it('keeps the quarter turns and leaves the original as it was', async () => {
    const { surveyId, photographs: [photograph] } = await withPhotographs(1, 90)
    if (photograph === undefined) throw new Error('no photograph')
    const before = await opened.photograph(photograph.sha256, 'original')
    expect((await ask(opened, 'photographs.turn', { photographId: photograph.id, quarterTurns: 3 })).photograph.quarterTurns).toBe(3)
    expect((await kept(surveyId))[0]?.quarterTurns).toBe(3)
    expect((await opened.photograph(photograph.sha256, 'original'))?.bytes).toEqual(before?.bytes)
    expect((await refusalOf(opened, 'photographs.turn', { photographId: photograph.id, quarterTurns: 4 })).code).toMatch(/^field\./)
  })
})

describe('every act', () => {
  it('counts as a change of the survey: a report that is being written meanwhile is composed anew', async () => {
    const { surveyId, photographs } = await withPhotographs(2, 100)
    const ids = idsOf(photographs)
    await signAs(opened, 'Odile Varga')
    const acts = [
      () => ask(opened, 'photographs.choose', { photographIds: ids, isPrinted: false }),
      () => ask(opened, 'photographs.assign', { photographIds: ids, place: placeAt(hub) }),
      () => ask(opened, 'photographs.order', { surveyId, photographIds: ids }),
      () => ask(opened, 'photographs.turn', { photographId: ids[0] ?? '', quarterTurns: 1 }),
    ]
    for (const act of acts) {
      written = 0
      meanwhile = () => {
        meanwhile = () => Promise.resolve()
        return act()
      }
      await ask(opened, 'reports.issue', { surveyId })
      expect(written).toBe(2)
      await ask(opened, 'surveys.reopen', { surveyId })
    }
  })

  it('is refused for photographs of two surveys, of none, removed, or of a survey that is issued', async () => {
    const one = await withPhotographs(2, 110)
    const two = await withPhotographs(1, 115)
    const both = [...idsOf(one.photographs), ...idsOf(two.photographs)]
    expect((await refusalOf(opened, 'photographs.choose', { photographIds: both, isPrinted: false })).code).toBe('photograph.of-two-surveys')
    expect((await refusalOf(opened, 'photographs.assign', { photographIds: both })).code).toBe('photograph.of-two-surveys')
    expect((await refusalOf(opened, 'photographs.choose', { photographIds: [nobody], isPrinted: false })).code).toBe('photograph.not-found')
    expect((await refusalOf(opened, 'photographs.choose', { photographIds: [], isPrinted: false })).code).toMatch(/^field\./)
    const [removed = ''] = idsOf(two.photographs)
    await ask(opened, 'photographs.remove', { photographId: removed })
    expect((await refusalOf(opened, 'photographs.assign', { photographIds: [removed] })).code).toBe('photograph.not-found')
    await signAs(opened, 'Odile Varga')
    await ask(opened, 'reports.issue', { surveyId: one.surveyId })
    const ids = idsOf(one.photographs)
    expect((await refusalOf(opened, 'photographs.choose', { photographIds: ids, isPrinted: false })).code).toBe('survey.issued')
    expect((await refusalOf(opened, 'photographs.assign', { photographIds: ids })).code).toBe('survey.issued')
    expect((await refusalOf(opened, 'photographs.order', { surveyId: one.surveyId, photographIds: ids })).code).toBe('survey.issued')
    expect((await refusalOf(opened, 'photographs.turn', { photographId: ids[0] ?? '', quarterTurns: 1 })).code).toBe('survey.issued')
  })
})

describe('turning, removing and bringing back several', () => {
  it('is one act: each turned as asked, and entered for each', async () => {
    const { surveyId, photographs } = await withPhotographs(3, 130)
    const [first = '', second = '', third = ''] = idsOf(photographs)
    const { photographs: turned } = await ask(opened, 'photographs.turnAll', { turns: [{ photographId: third, quarterTurns: 1 }, { photographId: first, quarterTurns: 3 }] })
    expect(turned.map(({ id, quarterTurns }) => [id, quarterTurns])).toEqual([[third, 1], [first, 3]])
    expect((await kept(surveyId)).map(({ quarterTurns }) => quarterTurns)).toEqual([3, 0, 1])
    await ask(opened, 'photographs.removeAll', { photographIds: [first, third] })
    expect(idsOf(await kept(surveyId))).toEqual([second])
    const { photographs: back } = await ask(opened, 'photographs.restoreAll', { photographIds: [third, first] })
    expect(idsOf(back)).toEqual([third, first])
    expect(idsOf(await kept(surveyId))).toEqual([first, second, third])
  })

  it('is refused whole where one of them cannot be, and nothing is half done', async () => {
    const one = await withPhotographs(2, 140)
    const other = await withPhotographs(1, 145)
    const mixed = [...idsOf(one.photographs), ...idsOf(other.photographs)]
    expect((await refusalOf(opened, 'photographs.removeAll', { photographIds: mixed })).code).toBe('photograph.of-two-surveys')
    expect((await refusalOf(opened, 'photographs.turnAll', { turns: [...idsOf(one.photographs), nobody].map((photographId) => ({ photographId, quarterTurns: 2 })) })).code).toBe('photograph.not-found')
    expect((await kept(one.surveyId)).map(({ quarterTurns }) => quarterTurns)).toEqual([0, 0])
    expect(await kept(other.surveyId)).toHaveLength(1)
    const [gone = ''] = idsOf(other.photographs)
    await ask(opened, 'photographs.removeAll', { photographIds: [gone] })
    expect((await refusalOf(opened, 'photographs.turnAll', { turns: [{ photographId: gone, quarterTurns: 1 }] })).code).toBe('photograph.not-found')
    await signAs(opened, 'Odile Varga')
    await ask(opened, 'reports.issue', { surveyId: one.surveyId })
    const photographIds = idsOf(one.photographs)
    expect((await refusalOf(opened, 'photographs.removeAll', { photographIds })).code).toBe('survey.issued')
    expect((await refusalOf(opened, 'photographs.restoreAll', { photographIds })).code).toBe('survey.issued')
    expect((await refusalOf(opened, 'photographs.turnAll', { turns: photographIds.map((photographId) => ({ photographId, quarterTurns: 1 })) })).code).toBe('survey.issued')
  })
})

describe('five hundred photographs', { timeout: 120_000 }, () => {
  /** The desk serves the window from one thread: it may not be held longer. */
  const budgetMs = 100
  const quickest = async (times: number, act: (run: number) => Promise<unknown>): Promise<number> => {
    let best = Infinity
    for (let run = 0; run < times; run += 1) {
      const began = performance.now()
      await act(run)
      best = Math.min(best, performance.now() - began)
    }
    return best
  }

  it('are ordered, chosen, assigned, turned, removed and brought back in well under a tenth of a second each', async () => {
    const { id: surveyId } = await startSurvey(opened)
    for (let index = 0; index < 500; index += 1) await ask(opened, 'photographs.add', { surveyId, fileName: `${index}.png` }, await picture(1000 + index))
    const photographIds = idsOf(await kept(surveyId))
    expect(photographIds).toHaveLength(500)
    const { desk } = opened
    expect(await quickest(4, (run) => desk['photographs.order']({ surveyId, photographIds: run % 2 === 0 ? photographIds.toReversed() : photographIds }))).toBeLessThan(budgetMs)
    expect(await quickest(4, (run) => desk['photographs.choose']({ photographIds, isPrinted: run % 2 === 0 }))).toBeLessThan(budgetMs)
    expect(await quickest(4, (run) => desk['photographs.assign']({ photographIds, ...(run % 2 === 0 && { place: placeAt(hub) }) }))).toBeLessThan(budgetMs)
    expect(await quickest(4, (run) => desk['photographs.turnAll']({ turns: photographIds.map((photographId, index) => ({ photographId, quarterTurns: (run + index) % 4 })) }))).toBeLessThan(budgetMs)
    expect(await quickest(4, (run) => (run % 2 === 0 ? desk['photographs.removeAll']({ photographIds }) : desk['photographs.restoreAll']({ photographIds })))).toBeLessThan(budgetMs)
  })
})
