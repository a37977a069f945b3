import { expect, it } from 'vitest'
import { Arrivals } from '../../../main/phone/arrivals'
import { largestPhotographBytes } from '../../../shared-logic/photographs/limits'
import { pictureId } from './running-door'

it('takes twenty gigabytes and nothing new after them; what was refused or sent again does not count', async () => {
  const arrivals = new Arrivals<string>()
  const pictures = 20_000_000_000 / largestPhotographBytes
  const refused = arrivals.take(pictureId(0), largestPhotographBytes, () => Promise.reject(new Error('no photograph')))
  await expect(refused).rejects.toThrow('no photograph')
  for (let picture = 1; picture <= pictures; picture += 1) {
    expect(arrivals.isFull).toBe(false)
    for (const word of ['kept', 'kept again']) expect(await arrivals.take(pictureId(picture), largestPhotographBytes, () => Promise.resolve(word))).toBe('kept')
  }
  expect(arrivals.isFull).toBe(true)
  expect(arrivals.known(pictureId(1))).toBe('kept')
})

it('takes five thousand pictures, however small', async () => {
  const arrivals = new Arrivals<string>()
  for (let picture = 1; picture <= 5_000; picture += 1) {
    expect(arrivals.isFull).toBe(false)
    await arrivals.take(pictureId(picture), 1, () => Promise.resolve('kept'))
  }
  expect(arrivals.isFull).toBe(true)
})
