import { cleanup, screen, waitFor, within } from '@testing-library/react'
import userEvent from '@testing-library/user-event'
import { afterEach, describe, expect, it, vi } from 'vitest'
import { drawWalk, photographOf, surveyAt } from './desk-of-one-survey'

afterEach(() => {
  cleanup()
  vi.restoreAllMocks()
  window.localStorage.clear()
})
window.scrollTo = () => undefined
Element.prototype.scrollIntoView = () => undefined

const oil = 'hubs.oil-level'
const at = 'axle 1 left'

/** The walk at a hub with two photographs, the first of them viewed large; its desk turns them. */
const viewFirst = async () => {
  const photographs = [photographOf(1, 'first.jpg', oil, at), photographOf(2, 'second.jpg', oil, at)]
  const turned: (readonly [string, number])[] = []
  drawWalk(oil, at, {
    'surveys.get': () => ({ ...surveyAt(oil, at), photographs }),
    'photographs.turn': ({ photographId, quarterTurns }) => {
      const photograph = photographs.find(({ id }) => id === photographId)
      if (photograph === undefined) throw new Error('no such photograph')
      turned.push([photograph.fileName, quarterTurns])
      return { photograph: { ...photograph, quarterTurns } }
    },
    'photographs.describe': ({ photographId, caption }) => {
      const photograph = photographs.find(({ id }) => id === photographId)
      if (photograph === undefined) throw new Error('no such photograph')
      return { photograph: { ...photograph, caption } }
    },
  })
  await userEvent.click(await screen.findByRole('button', { name: 'Photograph 1, view large' }))
  return { viewer: within(await screen.findByRole('dialog')), turned }
}

describe('a photograph viewed large', { timeout: 30_000 }, () => {
  it('is turned by a quarter, by button and by key, and turns struck in quick succession add up', async () => {
    const { viewer, turned } = await viewFirst()
    await userEvent.click(viewer.getByRole('button', { name: 'Turn right' }))
    await userEvent.keyboard('rr')
    await waitFor(() => expect(turned).toEqual([['first.jpg', 1], ['first.jpg', 2], ['first.jpg', 3]]))
    await userEvent.keyboard('R')
    await userEvent.click(viewer.getByRole('button', { name: 'Turn left' }))
    await waitFor(() => expect(turned.map(([, quarters]) => quarters)).toEqual([1, 2, 3, 0, 3]))
    await userEvent.click(viewer.getByRole('button', { name: 'Next' }))
    await userEvent.keyboard('l')
    await waitFor(() => expect(turned.at(-1)).toEqual(['second.jpg', 3]))
  })

  it('is not turned by a letter of its caption', async () => {
    const { viewer, turned } = await viewFirst()
    await userEvent.type(viewer.getByRole('textbox', { name: /^Caption/ }), 'rail')
    await userEvent.click(viewer.getByRole('button', { name: 'Turn left' }))
    await waitFor(() => expect(turned).toEqual([['first.jpg', 3]]))
  })

  it('is turned by its buttons alone where single keys are off', async () => {
    window.localStorage.setItem('bunkwright.single-keys', 'off')
    const { viewer, turned } = await viewFirst()
    await userEvent.keyboard('rl')
    await userEvent.click(viewer.getByRole('button', { name: 'Turn right' }))
    await waitFor(() => expect(turned).toEqual([['first.jpg', 1]]))
  })
})
