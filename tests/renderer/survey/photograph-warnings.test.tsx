import { cleanup, screen, waitFor, within } from '@testing-library/react'
import userEvent from '@testing-library/user-event'
import { afterEach, describe, expect, it, vi } from 'vitest'
import { largestPhotographBytes } from '../../../shared-logic/photographs/limits'
import type { Photograph } from '../../../shared-logic/survey/records'
import { drawWalk, photographOf } from './desk-of-one-survey'

afterEach(() => {
  cleanup()
  vi.restoreAllMocks()
})
window.scrollTo = () => undefined
Element.prototype.scrollIntoView = () => undefined

const oil = 'hubs.oil-level'
const good: Partial<Photograph> = { widthPx: 4000, heightPx: 3000, quality: { edgeWidthPx: 2, burntShare: 0, blackShare: 0, medianLuminance: 0.2 } }
const blurred: Partial<Photograph> = { ...good, quality: { edgeWidthPx: 9.1, burntShare: 0, blackShare: 0, medianLuminance: 0.2 } }

const fileOf = (name: string): File => new File(['x'], name, { type: 'image/jpeg' })

/** The walk over a desk whose photographs are as told by their file's name. */
const walkWith = (about: Readonly<Record<string, Partial<Photograph>>>) => {
  let number = 0
  const removed: string[] = []
  const drawn = drawWalk(oil, 'axle 1 left', {
    'photographs.add': ({ fileName, checkId, position }) => {
      number += 1
      return { photograph: { ...photographOf(number, fileName, checkId, position), ...about[fileName] }, alreadyThere: false }
    },
    'photographs.remove': ({ photographId }) => {
      removed.push(photographId)
      return {}
    },
  })
  const add = async (...names: string[]): Promise<void> => {
    await screen.findByRole('heading', { level: 3 })
    const input = drawn.container.querySelector<HTMLInputElement>('input[type=file]')
    if (!input) throw new Error('no picker')
    await userEvent.upload(input, names.map(fileOf))
  }
  return { ...drawn, add, removed }
}

const news = () => screen.getByRole('status', { name: 'Look again at these photographs' })

/** What the system's choice of a file would do, once it is opened. */
const chooseWhenOpened = (file: File): void => {
  vi.spyOn(HTMLInputElement.prototype, 'click').mockImplementation(function choose(this: HTMLInputElement) {
    Object.defineProperty(this, 'files', { value: [file] })
    this.dispatchEvent(new Event('change'))
  })
}

describe('what may be wrong with a photograph', { timeout: 30_000 }, () => {
  it('is said at once, to the eye and to the screen reader, by name and with its figure; it is kept either way', async () => {
    const { add } = walkWith({ 'hub.jpg': blurred })
    await screen.findByRole('heading', { level: 3 })
    expect(news().textContent).toBe('')
    await add('hub.jpg')
    expect(await within(news()).findByText('Blurred: hold still, come closer, or tap to focus. Its sharpest edges are spread over 9.1 px; for this check 4.5 px is the most.')).toBeDefined()
    expect(within(news()).getByText('hub.jpg')).toBeDefined()
    expect(within(news()).getByText('Kept either way.')).toBeDefined()
    expect(screen.getByRole('button', { name: 'hub.jpg (blurred), view large' })).toBeDefined()
  })

  it('a good one gives no word', async () => {
    const { add } = walkWith({ 'hub.jpg': good })
    await add('hub.jpg')
    expect(await screen.findByRole('button', { name: 'hub.jpg, view large' })).toBeDefined()
    expect(news().textContent).toBe('')
  })

  it('goes when it is understood, and stays marked on the picture and told beside it', async () => {
    const { add } = walkWith({ 'hub.jpg': blurred })
    await add('hub.jpg')
    await userEvent.click(await within(news()).findByRole('button', { name: 'Noted' }))
    expect(news().textContent).toBe('')
    await userEvent.click(screen.getByRole('button', { name: 'hub.jpg (blurred), view large' }))
    expect(await within(await screen.findByRole('dialog')).findByText(/^Blurred:/)).toBeDefined()
  })

  it('keeps the focus where it was when its button goes with it', async () => {
    const { add } = walkWith({ 'hub.jpg': blurred })
    await add('hub.jpg')
    const button = await within(news()).findByRole('button', { name: 'Noted' })
    button.focus()
    await userEvent.keyboard('{Enter}')
    await waitFor(() => expect(news().textContent).toBe(''))
    expect(document.activeElement).not.toBe(document.body)
    expect(document.activeElement?.contains(news())).toBe(true)
  })

  it('of a dozen every one is told, the gravest first, of equals the latest', async () => {
    const dark: Partial<Photograph> = { ...good, quality: { edgeWidthPx: 2, burntShare: 0, blackShare: 0, medianLuminance: 0.002 } }
    const burnt: Partial<Photograph> = { ...good, quality: { edgeWidthPx: 2, burntShare: 0.6, blackShare: 0, medianLuminance: 0.2 } }
    const small: Partial<Photograph> = { ...good, widthPx: 480, heightPx: 320 }
    const about = { 'blurred.jpg': blurred, 'dark.jpg': dark, 'burnt.jpg': burnt, ...Object.fromEntries(Array.from({ length: 9 }, (_, index) => [`small ${index + 1}.jpg`, small])) }
    const { add } = walkWith(about)
    await add(...Object.keys(about))
    await within(news()).findByText(/^12 photographs to look at again\./)
    const told = within(news()).getAllByRole('listitem').map((item) => /^(.*?\.jpg)(.*?):/.exec(item.textContent)?.slice(1))
    expect(told.slice(0, 5)).toEqual([['blurred.jpg', 'Blurred'], ['dark.jpg', 'Too dark'], ['burnt.jpg', 'Burnt out'], ['small 9.jpg', 'Small for this'], ['small 8.jpg', 'Small for this']])
    expect(told).toHaveLength(12)
  })

  it('of more than are shown at once only those shown are put away, and the others come then', async () => {
    const names = Array.from({ length: 23 }, (_, index) => `${index + 1}.jpg`)
    const { add } = walkWith(Object.fromEntries(names.map((name) => [name, blurred])))
    await add(...names)
    await within(news()).findByText('3 more come once these are noted.')
    expect(within(news()).getAllByRole('listitem')).toHaveLength(20)
    await userEvent.click(within(news()).getByRole('button', { name: 'Noted' }))
    expect(within(news()).getAllByRole('listitem').map((item) => /^\d+/.exec(item.textContent)?.[0])).toEqual(['3', '2', '1'])
    await userEvent.click(within(news()).getByRole('button', { name: 'Noted' }))
    expect(news().textContent).toBe('')
  })

  it('one that may be of no use is shown before those that only look like others, however many come after it', async () => {
    const look = { ...good, lookHash: '00000000000000ff' }
    const { add } = walkWith({ 'blurred.jpg': blurred, 'a.jpg': look, 'b.jpg': look, 'c.jpg': look })
    await add('blurred.jpg', 'a.jpg', 'b.jpg', 'c.jpg')
    await within(news()).findByText(/^3 photographs/)
    const [first, second] = within(news()).getAllByRole('listitem')
    expect(first?.textContent).toMatch(/^blurred\.jpgBlurred:/)
    expect(second?.textContent).toMatch(/^c\.jpgIt looks like “a\.jpg” here\.It looks like “b\.jpg” here\./)
  })

  it('beside it, large, the camera’s time and place stand as people read them', async () => {
    const { add } = walkWith({ 'hub.jpg': { ...good, takenAt: '2026-05-03T09:15:27+02:00', latitude: -38.70712, longitude: 9.1355 } })
    await add('hub.jpg')
    await userEvent.click(await screen.findByRole('button', { name: 'hub.jpg, view large' }))
    expect(await within(await screen.findByRole('dialog')).findByText('Taken 3 May 2026, 09:15 +02:00. At 38.70712° S, 9.13550° E')).toBeDefined()
  })
})

describe('taking it again', { timeout: 30_000 }, () => {
  it('takes the old one out once the new one is in, and not before; it can be had back', async () => {
    const { add, removed, asked } = walkWith({ 'hub.jpg': blurred, 'better.jpg': good })
    await add('hub.jpg')
    const button = await within(news()).findByRole('button', { name: 'Take it again: hub.jpg' })
    expect(removed).toEqual([])
    chooseWhenOpened(fileOf('better.jpg'))
    await userEvent.click(button)
    await waitFor(() => expect(removed).toEqual([photographOf(1, '').id]))
    const acts = asked.map(({ name }) => name).filter((name) => name.startsWith('photographs.'))
    expect(acts).toEqual(['photographs.add', 'photographs.add', 'photographs.remove'])
    expect(await screen.findByText('hub.jpg removed.')).toBeDefined()
    expect(screen.getByRole('button', { name: 'Undo' })).toBeDefined()
    await waitFor(() => expect(news().textContent).toBe(''))
    await userEvent.click(screen.getByRole('button', { name: 'Put this line away' }))
    expect(screen.queryByText('hub.jpg removed.')).toBeNull()
  })

  it('of one that the camera took opens the camera at its check; the old one waits for the next', async () => {
    const { add, removed } = walkWith({ 'hub.jpg': { ...blurred, source: 'camera' } })
    await add('hub.jpg')
    await within(news()).findByRole('button', { name: 'Take it again: hub.jpg' })
    await userEvent.keyboard('j')
    await waitFor(async () => expect((await screen.findByRole('heading', { level: 3 })).textContent).toMatch(/right front/))
    await userEvent.click(within(news()).getByRole('button', { name: 'Take it again: hub.jpg' }))
    const camera = await screen.findByRole('dialog', { name: 'Camera: Oil level, left front' })
    await userEvent.click(within(camera).getByRole('button', { name: 'Done' }))
    await waitFor(() => expect(screen.queryByRole('dialog')).toBeNull())
    expect((await screen.findByRole('heading', { level: 3 })).textContent).toMatch(/left front/)
    expect(within(news()).getByRole('button', { name: 'Goes when the new one is in: hub.jpg' })).toBeDefined()
    expect(removed).toEqual([])
  })

  it('leaves everything as it is when no file is chosen', async () => {
    const { add, removed } = walkWith({ 'hub.jpg': blurred })
    await add('hub.jpg')
    vi.spyOn(HTMLInputElement.prototype, 'click').mockImplementation(() => undefined)
    await userEvent.click(await within(news()).findByRole('button', { name: 'Take it again: hub.jpg' }))
    expect(within(news()).getByRole('button', { name: 'Take it again: hub.jpg' })).toBeDefined()
    expect(removed).toEqual([])
  })

  it('keeps the old one when the new one is refused', async () => {
    let count = 0
    const removed: string[] = []
    const { container } = drawWalk(oil, 'axle 1 left', {
      'photographs.add': ({ fileName, checkId, position }) => {
        count += 1
        return count === 1 ? { photograph: { ...photographOf(1, fileName, checkId, position), ...blurred }, alreadyThere: false } : { ok: false, refusal: { code: 'photograph.damaged', values: { name: fileName } } }
      },
      'photographs.remove': ({ photographId }) => {
        removed.push(photographId)
        return {}
      },
    })
    await screen.findByRole('heading', { level: 3 })
    const input = container.querySelector<HTMLInputElement>('input[type=file]')
    if (!input) throw new Error('no picker')
    await userEvent.upload(input, fileOf('hub.jpg'))
    const button = await within(news()).findByRole('button', { name: 'Take it again: hub.jpg' })
    chooseWhenOpened(fileOf('half.jpg'))
    await userEvent.click(button)
    expect(await screen.findByText(/“half.jpg” breaks off/)).toBeDefined()
    expect(removed).toEqual([])
    expect(screen.getByRole('button', { name: /^hub\.jpg.*, view large$/ })).toBeDefined()
  })
})

describe('pictures that are alike', { timeout: 30_000 }, () => {
  it('are pointed out by where the other stands', async () => {
    const { add } = walkWith({ 'hub.jpg': { ...good, lookHash: '00000000000000ff' }, 'again.jpg': { ...good, lookHash: '000000000000007f' } })
    await add('hub.jpg')
    await userEvent.keyboard('j')
    await waitFor(async () => expect((await screen.findByRole('heading', { level: 3 })).textContent).toMatch(/right front/))
    await add('again.jpg')
    expect(await within(news()).findByText('It looks like “hub.jpg” at “Oil level, left front”.')).toBeDefined()
    expect(within(news()).queryByRole('button', { name: 'Take it again: again.jpg' })).toBeNull()
  })

  it('are shown side by side, each with its name and place', async () => {
    const { add } = walkWith({ 'hub.jpg': { ...good, lookHash: '00000000000000ff' }, 'again.jpg': { ...good, lookHash: '000000000000007f' } })
    await add('hub.jpg')
    await userEvent.keyboard('j')
    await waitFor(async () => expect((await screen.findByRole('heading', { level: 3 })).textContent).toMatch(/right front/))
    await add('again.jpg')
    await userEvent.click(await within(news()).findByRole('button', { name: 'Side by side with what looks like it: again.jpg' }))
    const figures = within(await screen.findByRole('dialog', { name: 'Side by side' })).getAllByRole('figure')
    expect(figures.map((figure) => figure.textContent)).toEqual([
      'This oneagain.jpgOil level, right front4000 × 3000 pixels',
      'hub.jpgOil level, left front4000 × 3000 pixels',
    ])
  })
})

describe('in one line, where there is little room', { timeout: 30_000 }, () => {
  it('says what is wrong with one, how many there are of several, and opens the rest', async () => {
    const { add } = walkWith({ 'hub.jpg': { ...blurred, lookHash: '00000000000000ff' }, 'again.jpg': { ...blurred, lookHash: '00000000000000ff' } })
    await add('hub.jpg')
    expect(await within(news()).findByRole('button', { name: 'Look again: blurred' })).toBeDefined()
    await add('again.jpg')
    const line = await within(news()).findByRole('button', { name: 'Look again at 2 photographs' })
    expect(line.getAttribute('aria-expanded')).toBe('false')
    await userEvent.click(line)
    expect(line.getAttribute('aria-expanded')).toBe('true')
  })
})

describe('a file of 300 MB', { timeout: 30_000 }, () => {
  it('is refused by name before it is read or sent, and the rest goes in', async () => {
    const { container, asked } = walkWith({ 'hub.jpg': good })
    await screen.findByRole('heading', { level: 3 })
    const huge = fileOf('film.jpg')
    Object.defineProperty(huge, 'size', { value: 3 * largestPhotographBytes })
    const read = vi.spyOn(huge, 'arrayBuffer')
    const input = container.querySelector<HTMLInputElement>('input[type=file]')
    if (!input) throw new Error('no picker')
    await userEvent.upload(input, [huge, fileOf('hub.jpg')])
    expect(await screen.findByText('“film.jpg” is larger than 100 MB. Export it smaller, or as JPEG.')).toBeDefined()
    expect(await screen.findByRole('button', { name: /^hub\.jpg.*, view large$/ })).toBeDefined()
    expect(read).not.toHaveBeenCalled()
    expect(asked.filter(({ name }) => name === 'photographs.add')).toHaveLength(1)
  })
})
