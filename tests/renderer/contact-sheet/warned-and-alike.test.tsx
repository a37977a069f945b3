import { cleanup, screen, within } from '@testing-library/react'
import userEvent from '@testing-library/user-event'
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest'
import { drawSheet, layOut } from './a-sheet'
import { level, photographOf } from './some-photographs'

beforeEach(layOut)
afterEach(() => {
  cleanup()
  vi.restoreAllMocks()
})
window.scrollTo = () => undefined

const at = { checkId: level, position: 'axle 1 left' }
const exposure = { burntShare: 0, blackShare: 0, medianLuminance: 0.2 }
const photographs = [
  photographOf(1, { ...at, lookHash: '00000000000000ff', quality: { ...exposure, edgeWidthPx: 9 } }),
  photographOf(2, { ...at, lookHash: '000000000000007f', quality: { ...exposure, edgeWidthPx: 2 } }),
  photographOf(3, { lookHash: 'ffffffffffffff00' }),
]
const labels = async () => within(await screen.findByRole('grid', { name: 'Photographs' })).getAllByRole('row').map((row) => row.getAttribute('aria-label'))
const showOnly = async (option: string) => {
  await userEvent.click(await screen.findByRole('button', { name: / Show$/ }))
  await userEvent.click(await screen.findByRole('option', { name: option }))
}

describe('on the contact sheet', { timeout: 30_000 }, () => {
  it('a blurred photograph says so, two that look alike name each other, and either can be looked for', async () => {
    drawSheet(photographs)
    const [first, second, third] = await labels()
    expect(first).toMatch(/Blurred\. Looks like IMG_2\.jpg$/)
    expect(second).toMatch(/Looks like IMG_1\.jpg$/)
    expect(second).not.toMatch(/Blurred/)
    expect(third).not.toMatch(/Looks like|Blurred/)
    await showOnly('With warnings')
    expect(await labels()).toEqual([first])
    await showOnly('Look alike')
    expect(await labels()).toEqual([first, second])
  })
})
