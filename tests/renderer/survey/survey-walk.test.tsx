import { cleanup, screen, waitFor, within } from '@testing-library/react'
import userEvent from '@testing-library/user-event'
import { afterEach, describe, expect, it } from 'vitest'
import { drawWalk, photographOf } from './desk-of-one-survey'

afterEach(cleanup)
window.scrollTo = () => undefined
Element.prototype.scrollIntoView = () => undefined

const oil = 'hubs.oil-condition'
const openCheck = () => screen.findByRole('heading', { level: 3 })
const standsAt = (name: RegExp) => waitFor(async () => expect((await openCheck()).textContent).toMatch(name))

describe('answering on the walk', { timeout: 30_000 }, () => {
  it('opens at the check the surveyor stood at last', async () => {
    drawWalk(oil, 'axle 2 left')
    expect((await openCheck()).textContent).toBe('Oil conditionleft rear')
  })

  it('a number key gives the answer, and a pass moves on to the next open check', async () => {
    const { kept } = drawWalk(oil, 'axle 1 left')
    await openCheck()
    await userEvent.keyboard('1')
    await standsAt(/right front/)
    await waitFor(() => expect(kept).toEqual([{ place: `${oil} @ axle 1 left`, answer: { values: { condition: 'clear' } } }]))
  })

  it('a finding stays, with its reason and its remedy, until Enter goes on', async () => {
    drawWalk(oil, 'axle 1 left')
    await openCheck()
    await userEvent.keyboard('3')
    expect(await screen.findByText('The oil is milky: water has got in.')).toBeDefined()
    expect((await openCheck()).textContent).toMatch(/left front/)
    expect(screen.getByText('A finding here wants a photograph.')).toBeDefined()
    await userEvent.keyboard('{Enter}')
    await standsAt(/right front/)
  })

  it('rapid answers reach the desk in the order they were given', async () => {
    const { kept } = drawWalk(oil, 'axle 1 left')
    await openCheck()
    for (const position of ['right front', 'left rear', 'right rear']) {
      await userEvent.keyboard('1')
      await standsAt(new RegExp(position))
    }
    await waitFor(() => expect(kept.map((each) => each.place)).toEqual([`${oil} @ axle 1 left`, `${oil} @ axle 1 right`, `${oil} @ axle 2 left`]))
  })

  it('J and K go to the next check and back without answering', async () => {
    const { kept } = drawWalk(oil, 'axle 1 left')
    await openCheck()
    await userEvent.keyboard('j')
    await standsAt(/right front/)
    await userEvent.keyboard('k')
    await standsAt(/left front/)
    expect(kept).toEqual([])
  })

  it('arrow keys among the answers move without answering; Enter gives the answer', async () => {
    const { kept } = drawWalk(oil, 'axle 1 left')
    const first = await screen.findByRole('radio', { name: /Clear/ })
    first.focus()
    await userEvent.keyboard('{ArrowRight}{ArrowRight}')
    expect(document.activeElement?.textContent).toMatch(/Milky/)
    expect(kept).toEqual([])
    await userEvent.keyboard('{Enter}')
    await waitFor(() => expect(kept).toEqual([{ place: `${oil} @ axle 1 left`, answer: { values: { condition: 'milky' } } }]))
  })

  it('the same answer for the other hubs is given only when asked for, and to the open ones', async () => {
    const { kept } = drawWalk(oil, 'axle 1 left')
    await openCheck()
    await userEvent.keyboard('1')
    await userEvent.click(await screen.findByRole('button', { name: 'Clear for all 3 still open' }))
    await waitFor(() => expect(kept.map((each) => each.place)).toEqual([`${oil} @ axle 1 left`, `${oil} @ axle 1 right`, `${oil} @ axle 2 left`, `${oil} @ axle 2 right`]))
  })

  it('a fault is not offered for the other hubs', async () => {
    drawWalk(oil, 'axle 1 left')
    await openCheck()
    await userEvent.keyboard('3')
    expect(await screen.findAllByText(/water has got in/)).not.toEqual([])
    expect(screen.queryByRole('button', { name: /still open$/ })).toBeNull()
  })

  it('a reading is typed in the reader’s unit, judged at once and kept by Enter', async () => {
    const { kept } = drawWalk('hubs.oil-level', 'axle 1 left')
    await userEvent.type(await screen.findByRole('textbox', { name: 'Oil level in the glass' }), '40 %')
    expect(await screen.findByText('Oil below halfway.')).toBeDefined()
    await userEvent.keyboard('{Enter}')
    await standsAt(/right front/)
    await waitFor(() => expect(kept.at(-1)).toEqual({ place: 'hubs.oil-level @ axle 1 left', answer: { values: { level: 0.4 } } }))
  })

  it('a reading that cannot be read is not kept and does not go on', async () => {
    const { kept } = drawWalk('hubs.oil-level', 'axle 1 left')
    await userEvent.type(await screen.findByRole('textbox', { name: 'Oil level in the glass' }), 'plenty{Enter}')
    expect(await screen.findByText(/is not a number/)).toBeDefined()
    expect((await openCheck()).textContent).toMatch(/left front/)
    expect(kept).toEqual([])
  })

  it('a field that hangs on another appears when it is asked, and not before', async () => {
    drawWalk('wheels.age', 'axle 1 left')
    await openCheck()
    expect(screen.queryByRole('textbox')).toBeNull()
    await userEvent.keyboard('1')
    expect(await screen.findByRole('textbox')).toBeDefined()
  })
})

describe('what else is said of a check', { timeout: 30_000 }, () => {
  it('not seen needs a reason', async () => {
    const { kept } = drawWalk(oil, 'axle 1 left')
    await openCheck()
    await userEvent.keyboard('s')
    const dialog = within(await screen.findByRole('dialog'))
    await userEvent.click(dialog.getByRole('button', { name: 'Mark as not seen' }))
    expect(await dialog.findByText('Give the reason. The report shows it.')).toBeDefined()
    expect(kept).toEqual([])
    await userEvent.click(dialog.getByRole('button', { name: 'Under the boat' }))
    await waitFor(() => expect(kept).toEqual([{ place: `${oil} @ axle 1 left`, answer: { values: {}, aside: { as: 'not seen', reason: 'Under the boat' } } }]))
  })

  it('an overrule needs its own verdict and a reason, and both verdicts are shown', async () => {
    drawWalk(oil, 'axle 1 left')
    await openCheck()
    await userEvent.keyboard('2')
    await userEvent.click(await screen.findByRole('button', { name: 'Overrule' }))
    const dialog = within(await screen.findByRole('dialog'))
    await userEvent.click(dialog.getByRole('radio', { name: 'Pass' }))
    await userEvent.click(dialog.getByRole('button', { name: 'Overrule' }))
    expect(await dialog.findByText(/Give the reason/)).toBeDefined()
    await userEvent.type(dialog.getByRole('textbox', { name: 'Reason' }), 'This oil is dark when new')
    await userEvent.click(dialog.getByRole('button', { name: 'Overrule' }))
    expect(await screen.findByText('Judged Advisory, overruled to Pass: This oil is dark when new')).toBeDefined()
  })

  it('keys typed into a note are words, not answers', async () => {
    const { kept } = drawWalk(oil, 'axle 1 left')
    await openCheck()
    await userEvent.keyboard('n')
    await userEvent.type(await screen.findByRole('textbox', { name: 'Note' }), 'cap 3 jammed?')
    expect(screen.queryByRole('dialog')).toBeNull()
    expect((await openCheck()).textContent).toMatch(/left front/)
    await waitFor(() => expect(kept.at(-1)?.answer).toEqual({ values: {}, note: 'cap 3 jammed?' }))
  })

  it('what the desk refuses is said in a sentence, kept as typed, and can be tried again', async () => {
    let refusals = 1
    drawWalk(oil, 'axle 1 left', {
      'surveys.answer': () => {
        refusals -= 1
        if (refusals >= 0) return { ok: false, refusal: { code: 'photograph.disk-full', values: { name: 'x' } } }
        return { summary: { verdict: 'fail', tallies: { pass: 0, advisory: 0, fail: 1, 'not seen': 0, 'not applicable': 0 }, asked: 1, open: 0 } }
      },
    })
    await openCheck()
    await userEvent.keyboard('3')
    const alert = within(await screen.findByRole('alert'))
    expect(screen.getByRole('radio', { name: /Milky/ }).getAttribute('aria-checked')).toBe('true')
    expect(screen.getByText('Not saved.')).toBeDefined()
    await userEvent.click(alert.getByRole('button', { name: 'Try again' }))
    expect(await screen.findByText('Saved')).toBeDefined()
    expect(screen.queryByRole('alert')).toBeNull()
  })

  it('the question mark shows the keys, and they can be turned off', async () => {
    const { kept } = drawWalk(oil, 'axle 1 left')
    await openCheck()
    await userEvent.keyboard('?')
    await userEvent.click(await screen.findByRole('switch', { name: 'Single keys work' }))
    await userEvent.keyboard('{Escape}')
    await waitFor(() => expect(screen.queryByRole('dialog')).toBeNull())
    await userEvent.keyboard('1')
    expect((await openCheck()).textContent).toMatch(/left front/)
    expect(kept).toEqual([])
    window.localStorage.clear()
  })
})

describe('photographs on the walk', { timeout: 30_000 }, () => {
  it('one that cannot be read is refused by name and the rest goes in', async () => {
    let number = 0
    const { container } = drawWalk(oil, 'axle 1 left', {
      'photographs.add': ({ fileName, checkId, position }) => {
        if (fileName === 'notes.jpg') return { ok: false, refusal: { code: 'photograph.not-a-photograph', values: { name: fileName } } }
        number += 1
        return { photograph: photographOf(number, fileName, checkId, position), alreadyThere: false }
      },
    })
    await openCheck()
    const input = container.querySelector<HTMLInputElement>('input[type=file]')
    if (!input) throw new Error('no picker')
    await userEvent.upload(input, ['hub.jpg', 'notes.jpg', 'seal.jpg'].map((name) => new File(['x'], name, { type: 'image/jpeg' })))
    expect(await screen.findByText(/“notes.jpg” is not a photograph/)).toBeDefined()
    expect(await screen.findByText('2 photographs added.')).toBeDefined()
    expect(screen.getAllByRole('button', { name: /, view large$/ }).map((each) => each.getAttribute('aria-label'))).toEqual(['hub.jpg, view large', 'seal.jpg, view large'])
  })
})
