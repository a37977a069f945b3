import { act, cleanup, fireEvent, screen, waitFor, within } from '@testing-library/react'
import userEvent from '@testing-library/user-event'
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest'
import type { Photograph } from '../../../shared-logic/survey/records'
import { drawWalk, photographOf, surveyAt } from './desk-of-one-survey'

afterEach(() => {
  cleanup()
  vi.restoreAllMocks()
  vi.unstubAllGlobals()
  window.localStorage.clear()
})
window.scrollTo = () => undefined
Element.prototype.scrollIntoView = () => undefined

const oil = 'hubs.oil-level'
const at = 'axle 1 left'

/** The walk at a hub with two photographs, the first of them viewed large; its desk turns them. */
const viewFirst = async (format: Photograph['format'] = 'jpeg') => {
  const photographs: Photograph[] = [{ ...photographOf(1, 'first.jpg', oil, at), format }, photographOf(2, 'second.jpg', oil, at)]
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
  await userEvent.click(await screen.findByRole('button', { name: 'first.jpg, view large' }))
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

  it('is called by its name, and its place in the row is told as a place, not as a number of its own', async () => {
    const { viewer } = await viewFirst()
    expect(viewer.getByRole('heading', { name: 'first.jpg' })).toBeDefined()
    expect(viewer.getByText('1 of 2')).toBeDefined()
    await userEvent.click(viewer.getByRole('button', { name: 'Next' }))
    expect(viewer.getByRole('heading', { name: 'second.jpg' })).toBeDefined()
    expect(viewer.getByText('2 of 2')).toBeDefined()
    expect(viewer.queryByText(/^Photograph \d/)).toBeNull()
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

/** The width an enlarged picture would have on a screen, which jsdom does not lay out; whoever watches a size is told. */
const told = new Set<() => void>()
const shownAs = (widthPx: number): void => {
  vi.spyOn(HTMLElement.prototype, 'getBoundingClientRect').mockReturnValue(new DOMRect(0, 0, widthPx, (widthPx * 3) / 4))
  act(() => { for (const tell of told) tell() })
}
beforeEach(() => {
  told.clear()
  vi.stubGlobal('ResizeObserver', class {
    constructor(private readonly tell: () => void) {}
    observe(): void { told.add(this.tell) }
    unobserve(): void { told.delete(this.tell) }
    disconnect(): void { told.delete(this.tell) }
  })
})
const original = (viewer: Awaited<ReturnType<typeof viewFirst>>['viewer']): HTMLImageElement | null => viewer.getByRole('region').querySelector('img[src$="/original"]')
const loads = (image: HTMLImageElement | null, widthPx: number, heightPx: number): void => {
  if (image === null) throw new Error('no original is shown')
  Object.defineProperties(image, { naturalWidth: { value: widthPx }, naturalHeight: { value: heightPx } })
  fireEvent.load(image)
}

describe('a photograph seen closer', { timeout: 30_000 }, () => {
  it('is the copy as long as that has pixels enough, then the original', async () => {
    const { viewer } = await viewFirst()
    await userEvent.click(viewer.getByRole('button', { name: 'Larger' }))
    shownAs(1600)
    expect(original(viewer)).toBeNull()
    await userEvent.click(viewer.getByRole('button', { name: 'Larger' }))
    shownAs(2000)
    loads(original(viewer), 4000, 3000)
    expect(viewer.getByText('Shown is the original, 4000 × 3000 px.')).toBeDefined()
  })

  it('where the original cannot be read that is said, and nothing vouched for; it is not laid to its format', async () => {
    const { viewer } = await viewFirst()
    await userEvent.click(viewer.getByRole('button', { name: 'Larger' }))
    shownAs(2000)
    fireEvent.error(original(viewer) ?? document.body)
    expect(viewer.getByText('Shown is a copy of 1600 × 1200 px: the original cannot be read here. Verify the photographs in the review.')).toBeDefined()
    expect(viewer.queryByText(/kept as it came|cannot show/)).toBeNull()
    expect(original(viewer)).toBeNull()
  })

  it('stays the copy where the original would lie another way than its marks', async () => {
    const { viewer } = await viewFirst()
    await userEvent.click(viewer.getByRole('button', { name: 'Larger' }))
    shownAs(2000)
    loads(original(viewer), 3000, 4000)
    expect(viewer.getByText('Shown is a copy of 1600 × 1200 px: this window lays the original another way than its marks.')).toBeDefined()
    expect(original(viewer)).toBeNull()
  })

  it.each(['heic', 'tiff'] as const)('of a %s only the format is blamed, and the original is not asked for', async (format) => {
    const { viewer } = await viewFirst(format)
    await userEvent.click(viewer.getByRole('button', { name: 'Larger' }))
    shownAs(2000)
    expect(viewer.getByText('Shown is a copy of 1600 × 1200 px: this window cannot show the format of the original.')).toBeDefined()
    expect(original(viewer)).toBeNull()
  })

  it('keeps the place that was pressed in the middle when it is turned', async () => {
    const { viewer } = await viewFirst()
    const frame = viewer.getByRole('region')
    // A frame of 600 × 450 px and a picture thrice as large, turned to its side 450 × 600 px times three.
    Object.defineProperties(frame, { clientWidth: { value: 600 }, clientHeight: { value: 450 } })
    vi.spyOn(HTMLElement.prototype, 'getBoundingClientRect').mockImplementation(function rect(this: HTMLElement) {
      if (this.parentElement !== frame) return new DOMRect(0, 0, 600, 450)
      const isTurned = this.querySelector('img')?.dataset['turns'] === '1'
      return new DOMRect(-frame.scrollLeft, -frame.scrollTop, isTurned ? 1350 : 1800, isTurned ? 1800 : 1350)
    })
    fireEvent.pointerDown(frame, { clientX: 0.3 * 1800, clientY: 0.3 * 1350 })
    await userEvent.click(viewer.getByRole('button', { name: 'Larger' }))
    expect([frame.scrollLeft, frame.scrollTop].map(Math.round)).toEqual([240, 180])
    await userEvent.click(viewer.getByRole('button', { name: 'Turn right' }))
    // What lay 0.3 from the left and 0.3 from the top lies 0.3 from the right and 0.3 from the top.
    await waitFor(() => expect([frame.scrollLeft, frame.scrollTop].map(Math.round)).toEqual([645, 315]))
    await userEvent.click(viewer.getByRole('button', { name: 'Turn left' }))
    await waitFor(() => expect([frame.scrollLeft, frame.scrollTop].map(Math.round)).toEqual([240, 180]))
  })
})

describe('a photograph that cannot be read, original and copy', { timeout: 30_000 }, () => {
  it('is said in its place, without a broken picture; the next one is shown again', async () => {
    const { viewer } = await viewFirst()
    fireEvent.error(viewer.getByRole('img', { name: 'first.jpg' }))
    expect(viewer.getByRole('alert').textContent).toBe('This photograph cannot be read. Verify the photographs in the review.')
    expect(viewer.queryByRole('img', { name: 'first.jpg' })).toBeNull()
    await userEvent.click(viewer.getByRole('button', { name: 'Next' }))
    expect(viewer.queryByRole('alert')).toBeNull()
    await userEvent.click(viewer.getByRole('button', { name: 'Larger' }))
    shownAs(2000)
    loads(original(viewer), 4000, 3000)
    expect(viewer.getByText('Shown is the original, 4000 × 3000 px.')).toBeDefined()
  })

  it('is signed in the strip, to the eye and by name', async () => {
    drawWalk(oil, at, { 'surveys.get': () => ({ ...surveyAt(oil, at), photographs: [photographOf(1, 'first.jpg', oil, at)] }) })
    const small = await screen.findByRole('button', { name: 'first.jpg, view large' })
    fireEvent.error(small.querySelector('img') ?? document.body)
    expect(screen.getByText('Cannot be read')).toBeDefined()
    expect(screen.getByRole('button', { name: 'first.jpg (cannot be read), view large' })).toBe(small)
    expect(small.querySelector('img')).toBeNull()
  })
})

describe('the ways of the viewer, pressed to their end', { timeout: 30_000 }, () => {
  it.each([['Larger', 5], ['Next', 1]] as const)('%s does nothing more, keeps the focus, and Escape closes', async (way, presses) => {
    const { viewer } = await viewFirst()
    const button = viewer.getByRole('button', { name: way })
    for (let press = 0; press < presses; press += 1) await userEvent.click(button)
    expect(button.getAttribute('aria-disabled')).toBe('true')
    await userEvent.click(button)
    expect(document.activeElement).toBe(button)
    await userEvent.keyboard('{Escape}')
    await waitFor(() => expect(screen.queryByRole('dialog')).toBeNull())
  })

  it.each([['Smaller', 'Larger'], ['Previous', 'Next']] as const)('and so does %s on the way back', async (way, forth) => {
    const { viewer } = await viewFirst()
    const button = viewer.getByRole('button', { name: way })
    expect(button.getAttribute('aria-disabled')).toBe('true')
    await userEvent.click(viewer.getByRole('button', { name: forth }))
    expect(button.getAttribute('aria-disabled')).not.toBe('true')
    await userEvent.click(button)
    expect(document.activeElement).toBe(button)
    expect(viewer.getByText('1 of 2')).toBeDefined()
    await userEvent.keyboard('{Escape}')
    await waitFor(() => expect(screen.queryByRole('dialog')).toBeNull())
  })
})
