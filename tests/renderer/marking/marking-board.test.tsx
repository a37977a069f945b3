import { cleanup, screen, waitFor, within } from '@testing-library/react'
import userEvent from '@testing-library/user-event'
import { afterEach, describe, expect, it, vi } from 'vitest'
import { MarkingBoard } from '../../../renderer/marking/marking-board'
import { Refusal } from '../../../shared-logic/contract/refusal'
import type { MarkLayer } from '../../../shared-logic/marking/marks'
import type { Photograph } from '../../../shared-logic/survey/records'
import { en } from '../../../shared-logic/words/en'
import { photographOf } from '../survey/desk-of-one-survey'
import { drawWithDesk } from '../window-with-desk'

afterEach(cleanup)
// jsdom lays nothing out: the picture's frame is as large as on a desk.
Object.defineProperties(HTMLElement.prototype, { clientWidth: { configurable: true, value: 844 }, clientHeight: { configurable: true, value: 644 } })
const said = en.screens.marking
const photograph: Photograph = { ...photographOf(1, 'rail.jpg'), widthPx: 400, heightPx: 300 }

const draw = (more: Partial<Photograph> = {}, onKeep = vi.fn<(layer: MarkLayer) => Promise<void>>(() => Promise.resolve())) => {
  const onClose = vi.fn<() => void>()
  drawWithDesk(<MarkingBoard photograph={{ ...photograph, ...more }} onKeep={onKeep} onClose={onClose} />, {}, { units: 'metric' })
  return { onKeep, onClose }
}
const stage = () => screen.getByRole('application', { name: said.stage })
const keep = () => screen.getByRole('button', { name: said.keep })
const isHeld = (button: HTMLElement): boolean => button.hasAttribute('disabled')
const strike = (keys: string) => userEvent.keyboard(keys)
/** Ten px of the picture each. */
const right = (count: number): string => `{Shift>}{ArrowRight>${count}/}{/Shift}`
const down = (count: number): string => `{Shift>}{ArrowDown>${count}/}{/Shift}`
const marksKept = (onKeep: ReturnType<typeof draw>['onKeep']): MarkLayer['marks'] => onKeep.mock.lastCall?.[0].marks ?? []

describe('the marking board', { timeout: 30_000 }, () => {
  it('begins on the picture with the arrow in hand; drawn by keys it is kept in one call', async () => {
    const { onKeep, onClose } = draw()
    await waitFor(() => { expect(document.activeElement).toBe(stage()) })
    expect(isHeld(keep())).toBe(true)
    await strike(`{Enter}${right(5)}${down(3)}{Enter}`)
    await userEvent.click(keep())
    await waitFor(() => { expect(onClose).toHaveBeenCalledOnce() })
    expect(onKeep).toHaveBeenCalledOnce()
    expect(onKeep).toHaveBeenCalledWith({ widthPx: 400, heightPx: 300, marks: [{ kind: 'arrow', from: [200, 150], to: [250, 180] }] })
  })

  it('stays open with the reason where the layer was not kept, and nothing drawn is lost', async () => {
    const { onKeep, onClose } = draw({}, vi.fn<(layer: MarkLayer) => Promise<void>>(() => Promise.reject(new Refusal({ code: 'photograph.not-found' }))))
    await strike(`{Enter}${right(5)}{Enter}`)
    await userEvent.click(keep())
    expect((await screen.findByRole('alert')).textContent).toContain(en.refusals['photograph.not-found'])
    expect(onClose).not.toHaveBeenCalled()
    await userEvent.click(keep())
    expect(onKeep).toHaveBeenCalledTimes(2)
    expect(marksKept(onKeep)).toHaveLength(1)
  })

  it('tells no length while none is known, says what is missing, and measures once it is typed with its unit', async () => {
    const { onKeep } = draw()
    await strike(`l{Enter}${right(10)}{Enter}`)
    expect(screen.getByText(said.known.why)).toBeDefined()
    expect(screen.getByRole('heading', { name: `Mark 1: ${said.on.noLength}` })).toBeDefined()
    await strike(`k{Enter}${down(10)}{Enter}`)
    expect(screen.getByText(said.known.waits)).toBeDefined()
    expect(isHeld(keep())).toBe(true)
    // 100 px are known to be half a metre, so 100 px measured are as long.
    await userEvent.type(screen.getByRole('textbox', { name: said.known.length }), '50 cm')
    expect(isHeld(keep())).toBe(false)
    expect(screen.getByText(/^Lengths hold on the face the known length lies on\. Seen 20° off square, one can read 6 % too short or too long\.$/)).toBeDefined()
    await userEvent.click(keep())
    expect(onKeep.mock.lastCall?.[0].scale).toEqual({ kind: 'length', from: [300, 150], to: [300, 250], lengthM: 0.5, writtenIn: 'cm' })
  })

  it('a known length too short to measure by is refused in a sentence, and nothing is kept with it', async () => {
    draw()
    await strike('k{Enter}{Shift>}{ArrowRight}{/Shift}{Enter}')
    await userEvent.type(screen.getByRole('textbox', { name: said.known.length }), '50 mm')
    expect(screen.getByRole('alert').textContent).toMatch(/^The known length is only 10 px long in the picture/)
    expect(isHeld(keep())).toBe(true)
    await userEvent.click(screen.getByRole('button', { name: said.remove }))
    expect(screen.queryByRole('alert')).toBeNull()
  })

  it('words are written in a field: Enter puts them there, Escape gives them up, an empty field changes nothing', async () => {
    const { onKeep, onClose } = draw()
    await strike('t{Enter}')
    const field = () => screen.getByRole('textbox', { name: said.words.label })
    await waitFor(() => { expect(document.activeElement).toBe(field()) })
    await strike('gone{Escape}')
    expect(onClose).not.toHaveBeenCalled()
    expect(document.activeElement).toBe(stage())
    await strike(`${right(5)}{Enter}crack at the weld{Enter}`)
    expect(screen.getByRole('heading', { name: 'Mark 1: “crack at the weld”' })).toBeDefined()
    await userEvent.clear(field())
    expect(screen.getByText(said.words.empty)).toBeDefined()
    await userEvent.type(field(), 'split')
    await userEvent.click(keep())
    expect(marksKept(onKeep)).toEqual([{ kind: 'text', at: [250, 150], text: 'split' }])
  })

  it('Tab comes to every mark; arrows move the whole or an end, Delete takes it away, undo has it back', async () => {
    const { onKeep } = draw({ marks: { widthPx: 400, heightPx: 300, marks: [{ kind: 'box', from: [50, 50], to: [150, 100] }, { kind: 'arrow', from: [200, 200], to: [300, 250] }] } })
    stage().focus()
    await userEvent.tab()
    expect(document.activeElement?.getAttribute('aria-label')).toBe('Mark 1: box, at 100, 75')
    await strike('{ArrowRight}{Shift>}{ArrowUp}{/Shift}')
    expect(document.activeElement?.getAttribute('aria-label')).toBe('Mark 1: box, at 101, 65')
    await userEvent.tab()
    expect(document.activeElement?.getAttribute('aria-label')).toBe('One corner of mark 1, at 51, 40')
    await strike('{ArrowLeft}')
    await userEvent.tab()
    await userEvent.tab()
    expect(document.activeElement?.getAttribute('aria-label')).toBe('Mark 2: arrow, at 250, 225')
    await strike('{Delete}')
    expect(document.activeElement).toBe(stage())
    expect(within(stage()).queryByRole('group', { name: /^Mark 2/ })).toBeNull()
    await strike('{Control>}z{/Control}')
    await userEvent.click(keep())
    expect(marksKept(onKeep)).toEqual([{ kind: 'box', from: [50, 40], to: [151, 90] }, { kind: 'arrow', from: [200, 200], to: [300, 250] }])
  })

  it('undo by keys goes past a typed known length and on, redo comes back; the focus stays on the picture', async () => {
    draw()
    await strike(`{Enter}${right(5)}{Enter}k{Enter}${down(10)}{Enter}`)
    const field = () => screen.queryByRole<HTMLInputElement>('textbox', { name: said.known.length })
    await waitFor(() => { expect(document.activeElement).toBe(field()) })
    await strike('60 mm{Enter}')
    expect(document.activeElement).toBe(stage())
    await strike('{Control>}z{/Control}')
    expect(field()?.value).toBe('')
    expect(document.activeElement).toBe(stage())
    await strike('{Control>}z{/Control}')
    expect(field()).toBeNull()
    await strike('{Control>}{Shift>}zz{/Shift}{/Control}')
    expect(field()?.value).toBe('60 mm')
    expect(document.activeElement).toBe(stage())
    await strike('{Control>}zzz{/Control}')
    expect(within(stage()).queryByRole('group', { name: /^Mark 1/ })).toBeNull()
  })

  it('tells what was undone and done again: drawn, moved, taken away, and the known length', async () => {
    draw()
    await strike(`{Enter}${right(5)}{Enter}`)
    expect(screen.getByText('Drawn. Mark 1: arrow.')).toBeDefined()
    await strike('{Control>}z{/Control}')
    expect(screen.queryByText('Drawn. Mark 1: arrow.')).toBeNull()
    expect(screen.getByText('Undone. Mark 1: arrow is gone.')).toBeDefined()
    await userEvent.click(screen.getByRole('button', { name: en.screens.pictureBoard.redo }))
    expect(screen.getByText('Done again. Mark 1: arrow is back.')).toBeDefined()
    stage().focus()
    await userEvent.tab()
    await strike('{ArrowRight}{Control>}z{/Control}')
    expect(screen.getByText('Undone. Mark 1: arrow is as it was.')).toBeDefined()
    await userEvent.click(screen.getByRole('button', { name: said.remove }))
    expect(screen.getByText('Taken away. Mark 1: arrow.')).toBeDefined()
    await strike('{Control>}z{/Control}')
    expect(screen.getByText('Undone. Mark 1: arrow is back.')).toBeDefined()
    await strike(`k{Enter}${down(5)}{Enter}`)
    await waitFor(() => { expect(document.activeElement?.tagName).toBe('INPUT') })
    stage().focus()
    await strike('{Control>}z{/Control}')
    expect(screen.getByText('Undone. Known length is gone.')).toBeDefined()
    // More steps than were taken: nothing is told of a step that was none.
    await strike('{Control>}zzzz{/Control}')
    expect(screen.getByText('Undone. Mark 1: arrow is gone.')).toBeDefined()
  })

  it('an undo or redo that is used up hands the focus to the other', async () => {
    draw()
    await strike(`{Enter}${right(5)}{Enter}`)
    const undo = screen.getByRole('button', { name: en.screens.pictureBoard.undo })
    const redo = screen.getByRole('button', { name: en.screens.pictureBoard.redo })
    undo.focus()
    await strike('{Enter}')
    expect(isHeld(undo)).toBe(true)
    expect(document.activeElement).toBe(redo)
    await strike('{Enter}')
    expect(isHeld(redo)).toBe(true)
    expect(document.activeElement).toBe(undo)
  })

  it('while words are written nothing of the mark before is offered', async () => {
    draw()
    await strike(`{Enter}${right(5)}{Enter}`)
    expect(screen.getByText('Drawn. Mark 1: arrow.')).toBeDefined()
    expect(screen.getByRole('button', { name: said.remove })).toBeDefined()
    await strike('t{Enter}')
    await screen.findByRole('textbox', { name: said.words.label })
    expect(screen.queryByRole('button', { name: said.remove })).toBeNull()
  })

  it('asks before anything drawn is thrown away, and not where nothing was', async () => {
    const { onClose } = draw()
    await strike(`{Enter}${right(2)}{Enter}`)
    await userEvent.click(screen.getByRole('button', { name: said.cancel }))
    await userEvent.click(await screen.findByRole('button', { name: said.stay }))
    expect(onClose).not.toHaveBeenCalled()
    const leaving = new Event('beforeunload', { cancelable: true })
    window.dispatchEvent(leaving)
    expect(leaving.defaultPrevented).toBe(true)
    await userEvent.click(screen.getByRole('button', { name: en.screens.pictureBoard.undo }))
    await userEvent.click(screen.getByRole('button', { name: said.cancel }))
    expect(onClose).toHaveBeenCalledOnce()
  })
})
