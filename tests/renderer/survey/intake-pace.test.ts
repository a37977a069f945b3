import { afterEach, beforeEach, expect, it, vi } from 'vitest'
import { IntakePace, type Arrived } from '../../../renderer/survey/intake-pace'
import { photographOf } from '../contact-sheet/some-photographs'

beforeEach(() => { vi.useFakeTimers() })
afterEach(() => { vi.useRealTimers() })

const makePace = () => {
  const shown: Arrived[] = []
  return { pace: new IntakePace((arrived) => shown.push(arrived)), shown }
}
const running = (done: number) => ({ total: 500, done, taken: done, takenBefore: 0, refused: [], state: 'running' as const })

it('shows the first photograph at once', () => {
  const { pace, shown } = makePace()
  pace.keep(photographOf(1))
  expect(shown.map(({ photographs }) => photographs.length)).toEqual([1])
})

it('shows what comes meanwhile together, in the order it came, five times a second at most', () => {
  const { pace, shown } = makePace()
  for (let number = 1; number <= 100; number += 1) {
    pace.keep(photographOf(number))
    pace.tell(running(number))
    vi.advanceTimersByTime(10)
  }
  vi.advanceTimersByTime(1_000)
  expect(shown.length).toBeLessThanOrEqual(7)
  expect(shown.flatMap(({ photographs }) => photographs.map(({ fileName }) => fileName))).toEqual(Array.from({ length: 100 }, (_, index) => `IMG_${index + 1}.jpg`))
  expect(shown.at(-1)?.news?.batch?.done).toBe(100)
})

it('loses neither the last photograph nor the end of the batch, nor that it was put away', () => {
  const { pace, shown } = makePace()
  pace.keep(photographOf(1))
  pace.keep(photographOf(2))
  pace.tell({ ...running(2), state: 'finished' })
  vi.advanceTimersByTime(200)
  expect(shown.at(-1)).toMatchObject({ photographs: [{ fileName: 'IMG_2.jpg' }], news: { batch: { state: 'finished' } } })
  pace.tell(undefined)
  vi.advanceTimersByTime(200)
  expect(shown.at(-1)?.news).toEqual({ batch: undefined })
  vi.advanceTimersByTime(10_000)
  expect(shown).toHaveLength(3)
})
