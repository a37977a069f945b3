import { expect, test } from 'vitest'
import { openLanes } from '../../../main/photos/lanes'

test('never more jobs at once than lanes, all of them in the order they came', async () => {
  const lanes = openLanes(2)
  const started: number[] = []
  let [running, most] = [0, 0]
  const job = (number: number) => async (): Promise<number> => {
    started.push(number)
    running += 1
    most = Math.max(most, running)
    await new Promise((resolve) => setTimeout(resolve, 3 + (number % 3)))
    running -= 1
    return number
  }
  const numbers = Array.from({ length: 12 }, (_, index) => index)
  expect(await Promise.all(numbers.map((number) => lanes.run(job(number))))).toEqual(numbers)
  expect(most).toBe(2)
  expect(started).toEqual(numbers)
})

test('a failing job frees its lane', async () => {
  const lanes = openLanes(1)
  await expect(lanes.run(() => Promise.reject(new Error('damaged')))).rejects.toThrow('damaged')
  expect(await lanes.run(() => Promise.resolve('next'))).toBe('next')
})
