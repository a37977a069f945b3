import { describe, expect, it } from 'vitest'
import { arrange, stationsShown, type SheetWish } from '../../../renderer/contact-sheet/arrange'
import type { SheetPhotograph } from '../../../renderer/contact-sheet/sheet-photograph'
import { catalogue } from '../../../shared-logic/checks/catalogue'
import { assess } from '../../../shared-logic/survey/assess'
import { factsOf } from '../../../shared-logic/survey/facts'
import { timeTaken } from '../../../shared-logic/photographs/time-taken'
import { placeKey } from '../../../shared-logic/survey/keys'
import type { Photograph } from '../../../shared-logic/survey/records'
import { aSurvey, fourPhotographs, level, oil, photographOf } from './some-photographs'

const assessed = assess(catalogue, factsOf(aSurvey([])))
const walk = new Map(assessed.map((each, index) => [each.key, index]))

const asShown = (photograph: Photograph, more: Partial<SheetPhotograph> = {}): SheetPhotograph => {
  const owner = assessed.find(({ key }) => photograph.checkId !== undefined && key === placeKey(photograph.checkId, photograph.position ?? ''))
  return { id: photograph.id, photograph, owner, station: owner?.check.station, taken: timeTaken(photograph, 'UTC'), name: photograph.fileName, where: photograph.checkId ?? 'No check', warnings: [], alike: [], ...more }
}
const all = fourPhotographs.map((photograph) => asShown(photograph))
const everything: SheetWish = { find: '', sort: 'own', show: 'all', station: 'all' }
const numbersOf = (shown: readonly SheetPhotograph[]): string => shown.map(({ photograph }) => photograph.fileName.replaceAll(/\D/g, '')).join(' ')
const shownBy = (wish: Partial<SheetWish>, photographs = all): string => numbersOf(arrange(photographs, { ...everything, ...wish }, walk))

describe('the order of the sheet', () => {
  it('is the survey’s own where nothing else is asked', () => expect(shownBy({ sort: 'own' })).toBe('1 2 3 4'))

  it('walks round the rig, keeps the own order within a check, and puts those of no check last', () => {
    expect(walk.get(placeKey(oil, 'axle 1 left'))).toBeLessThan(walk.get(placeKey(level, 'axle 1 left')) ?? 0)
    expect(shownBy({ sort: 'walk' })).toBe('3 4 2 1')
    expect(shownBy({ sort: 'walk' }, all.toReversed())).toBe('4 3 2 1')
  })

  it('puts a check that is no longer asked before those of none', () => {
    const away = asShown(photographOf(9, { checkId: 'gone.away', position: 'rig' }))
    expect(shownBy({ sort: 'walk' }, [...all, away])).toBe('3 4 2 9 1')
  })

  it('goes by the camera’s clock, whatever zone it names, and puts those without a time last', () => expect(shownBy({ sort: 'taken' })).toBe('4 2 1 3'))

  it('takes what this program took as taken when it came in, by its own clock where the survey is made', () => {
    // Between the second, of 09:10, and the first, of 09:30, in the winter of New York: IANA time zone database, America/New_York, UTC−5.
    const own = photographOf(7, { source: 'camera', addedAt: '2026-11-20T14:20:00Z' })
    const there = asShown(own, { taken: timeTaken(own, 'America/New_York') })
    expect(there.taken).toEqual({ at: '2026-11-20T09:20:00', by: 'program' })
    expect(shownBy({ sort: 'taken' }, [there, ...all])).toBe('4 2 7 1 3')
  })

  it('goes by arrival', () => expect(shownBy({ sort: 'arrival' })).toBe('4 3 2 1'))
})

describe('what the sheet shows', () => {
  it.each([['all', '1 2 3 4'], ['no check', '1'], ['not printed', '3'], ['findings', '3 4']] as const)('of %s', (show, numbers) => expect(shownBy({ show })).toBe(numbers))

  it('of warnings and of those that look alike', () => {
    const told = all.map((each, index) => ({ ...each, warnings: index === 1 ? ['Blurred'] : [], alike: index > 1 ? ['another'] : [] }))
    expect(shownBy({ show: 'warned' }, told)).toBe('2')
    expect(shownBy({ show: 'alike' }, told)).toBe('3 4')
  })

  it('at one station alone, and offers the stations that have photographs', () => {
    expect(shownBy({ station: 'hubs' })).toBe('2 3 4')
    expect(shownBy({ station: 'frame' })).toBe('')
    expect(stationsShown(all)).toEqual(['hubs'])
  })

  it.each([
    ['img_2', '2'], ['LEVEL side', '2'], ['side level', '2'], ['oil-condition', '3 4'], ['  ', '1 2 3 4'], ['nowhere', ''],
  ])('finds “%s” in caption, file name or check, every word of it', (find, numbers) => expect(shownBy({ find })).toBe(numbers))

  it('finds letters with and without their marks', () => {
    const marked = all.map((each) => ({ ...each, photograph: { ...each.photograph, caption: 'Élan à quai' } }))
    expect(shownBy({ find: 'elan quai' }, marked)).toBe('1 2 3 4')
  })
})
