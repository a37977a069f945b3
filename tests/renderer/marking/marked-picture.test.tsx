import { cleanup, screen } from '@testing-library/react'
import { afterEach, describe, expect, it } from 'vitest'
import { MarkedPicture } from '../../../renderer/marking/marked-picture'
import type { Photograph } from '../../../shared-logic/survey/records'
import { photographOf } from '../survey/desk-of-one-survey'
import { drawWithDesk } from '../window-with-desk'

afterEach(cleanup)
const plain = { ...photographOf(1, 'rail.jpg'), widthPx: 400, heightPx: 300 }
const marked: Photograph = { ...plain, marks: { widthPx: 400, heightPx: 300, marks: [{ kind: 'arrow', from: [10, 10], to: [200, 100] }, { kind: 'text', at: [200, 250], text: 'crack' }] } }
const draw = (photograph: Photograph, alt = 'Left rail') => drawWithDesk(<MarkedPicture photograph={photograph} size="large" alt={alt} fit="contain" />, {}, { units: 'metric' }).container

describe('a photograph where it is shown', () => {
  it('unmarked is the picture alone, by its own words', () => {
    const container = draw(plain)
    expect(screen.getByRole('img', { name: 'Left rail' }).getAttribute('src')).toBe(`photographs/${plain.sha256}/large`)
    expect(container.querySelector('svg')).toBeNull()
  })

  it('marked has its layer over it, in px of the picture, and says what is marked', () => {
    const container = draw(marked)
    expect(screen.getByRole('img', { name: 'Left rail; marked: arrow, “crack”' })).toBeDefined()
    expect(container.querySelector('svg')?.getAttribute('viewBox')).toBe('0 0 400 300')
    expect(container.querySelector('svg text')?.textContent).toBe('crack')
  })

  it('turned is as wide as it was high, and its layer with it; words are not turned', () => {
    const container = draw({ ...marked, quarterTurns: 1 })
    expect(container.querySelector('svg')?.getAttribute('viewBox')).toBe('0 0 300 400')
    expect(container.querySelector('svg [transform]')).toBeNull()
    expect(screen.getByRole('img').dataset['turns']).toBe('1')
  })

  it('where what is around it names it already, it says nothing twice', () => {
    expect(draw(marked, '').querySelector('img')?.getAttribute('alt')).toBe('')
  })

  it('looked at closer its marks keep their size on the screen: lines and letters are finer on the picture by as much', () => {
    const sizesAt = (closer: number) => {
      const { container, unmount } = drawWithDesk(<MarkedPicture photograph={marked} size="large" alt="" fit="contain" closer={closer} />, {}, { units: 'metric' })
      const strokes = [...container.querySelectorAll('svg path')].map((path) => Number(path.getAttribute('stroke-width')) * closer)
      const letters = Number(container.querySelector('svg text')?.getAttribute('font-size')) * closer
      unmount()
      return { strokes, letters }
    }
    const whole = sizesAt(1)
    const close = sizesAt(4)
    expect(close.letters).toBeCloseTo(whole.letters)
    expect(close.strokes.length).toBe(whole.strokes.length)
    for (const [index, stroke] of close.strokes.entries()) expect(stroke).toBeCloseTo(whole.strokes[index] ?? 0)
  })
})
