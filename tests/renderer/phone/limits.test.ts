import { expect, it } from 'vitest'
import { byteLimit } from '../../../main/photos/decoder'
import { fileLimitBytes } from '../../../main/serving/body'
import { largestPhotographBytes } from '../../../shared-logic/photographs/limits'

it('a phone refuses what the intake would refuse, and nothing that it would take', () => {
  expect(largestPhotographBytes).toBe(byteLimit)
  expect(fileLimitBytes).toBeGreaterThanOrEqual(largestPhotographBytes)
})
