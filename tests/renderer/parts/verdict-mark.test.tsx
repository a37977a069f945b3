import { cleanup, render } from '@testing-library/react'
import { afterEach, describe, expect, it } from 'vitest'
import { TalliesLine } from '../../../renderer/parts/tallies-line'
import { VerdictMark } from '../../../renderer/parts/verdict-mark'
import { verdicts } from '../../../shared-logic/survey/verdict'
import { en } from '../../../shared-logic/words/en'

afterEach(cleanup)

const geometry = (container: HTMLElement): string => [...container.querySelectorAll('svg *')].map((shape) => `${shape.tagName} ${shape.getAttribute('d') ?? ''}`).join(';') + (container.innerHTML.match(/class="[^"]*"/g) ?? []).join()

describe('a verdict never stands by its colour alone', () => {
  it.each(verdicts)('“%s” has a word and a shape', (verdict) => {
    const { container } = render(<VerdictMark verdict={verdict} />)
    expect(container.textContent).toBe(en.verdicts[verdict])
    expect(container.querySelectorAll('svg *').length).toBeGreaterThan(0)
    expect(container.querySelector('svg')?.getAttribute('aria-hidden')).toBe('true')
  })

  it('has five different shapes', () => {
    const drawn = verdicts.map((verdict) => {
      const { container, unmount } = render(<VerdictMark verdict={verdict} isWordHidden />)
      const shape = geometry(container)
      unmount()
      return shape
    })
    expect(new Set(drawn).size).toBe(verdicts.length)
  })

  it('keeps its word for the screen reader where only the shape is shown', () => {
    const { getByText } = render(<VerdictMark verdict="not seen" isWordHidden />)
    expect(getByText('Not seen').className).toContain('visually-hidden')
  })

  it('counts not seen beside pass, never in it', () => {
    const { getByRole } = render(<TalliesLine tallies={{ pass: 61, advisory: 9, fail: 3, 'not seen': 7, 'not applicable': 2 }} />)
    expect([...getByRole('list').children].map((item) => item.textContent)).toEqual(['61 Pass', '9 Advisory', '3 Fail', '7 Not seen', '2 Not applicable'])
  })
})
