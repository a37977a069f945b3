import { cleanup, fireEvent, screen, waitFor } from '@testing-library/react'
import userEvent from '@testing-library/user-event'
import { afterEach, describe, expect, it, vi } from 'vitest'
import { MeasuringBoard } from '../../../renderer/measuring/measuring-board'
import type { Engine } from '../../../renderer/measuring/use-computing'
import { workerDesk } from '../../../renderer/measuring/worker-desk'
import type { Measurement } from '../../../shared-logic/measuring/measurement'
import type { Photograph } from '../../../shared-logic/survey/records'
import { en } from '../../../shared-logic/words/en'
import { photographOf } from '../survey/desk-of-one-survey'
import { drawWithDesk } from '../window-with-desk'

afterEach(cleanup)
// jsdom lays nothing out: the picture's frame is as large as on a desk.
Object.defineProperties(HTMLElement.prototype, { clientWidth: { configurable: true, value: 844 }, clientHeight: { configurable: true, value: 644 } })
const said = en.screens.measuring
const photograph: Photograph = { ...photographOf(1, 'rail.jpg'), widthPx: 400, heightPx: 300 }
const grey = { width: 400, height: 300, data: new Uint8Array(400 * 300 * 4).fill(128) }

/** The real computing, in this thread, on a picture of plain grey. */
const engine: Engine = {
  start: (hear) => {
    const answer = workerDesk(hear, () => grey)
    return { send: answer, end: () => undefined }
  },
  bitmapOf: () => Promise.resolve({ close: () => undefined } as unknown as ImageBitmap),
}

const draw = (measurement?: Measurement) => {
  const onKeep = vi.fn<(measurement: Measurement) => void>()
  const onClose = vi.fn<() => void>()
  const gradeOf = vi.fn<() => null>(() => null)
  drawWithDesk(<MeasuringBoard photographs={[photograph]} measurement={measurement} onFiles={() => undefined} news={null} gradeOf={gradeOf} onKeep={onKeep} onClose={onClose} engine={engine} />, {}, { units: 'metric' })
  // jsdom fetches no pictures: it is told that this one came.
  const image = document.querySelector('[role=application] img')
  if (image) fireEvent.load(image)
  return { onKeep, onClose, gradeOf }
}

const stage = () => screen.getByRole('application', { name: said.stage })
const addPoint = () => userEvent.click(screen.getByRole('button', { name: said.addPoint }))
const step = (name: string) => userEvent.click(screen.getByRole('button', { name: new RegExp(`^${name}`) }))
const pressAt = async (keys: string): Promise<void> => {
  stage().focus()
  await userEvent.keyboard(keys)
}
/** From the middle of the picture: a point here, then one further on. */
const right = '{Shift>}{ArrowRight>5/}{/Shift}'
const down = '{Shift>}{ArrowDown>5/}{/Shift}'
const left = '{Shift>}{ArrowLeft>5/}{/Shift}'

describe('measuring by keyboard alone', { timeout: 30_000 }, () => {
  it('scale, outline and area: a square of half the known length has a quarter of its square', async () => {
    const { onKeep } = draw()
    await pressAt(`{Enter}${right}${right}{Enter}`)
    await userEvent.type(screen.getByRole('textbox', { name: said.scale.length }), '100 mm')
    await step(said.steps.outline)
    await pressAt(`{Enter}${down}{Enter}${left}{Enter}`)
    await pressAt('{Shift>}{ArrowUp>5/}{/Shift}{Enter}')
    expect(await screen.findByText(/^25 cm² ± /, { selector: 'dd' })).toBeDefined()
    await userEvent.click(screen.getByRole('button', { name: said.keep }))
    const [kept] = onKeep.mock.calls[0] ?? []
    expect(kept?.result.areaM2).toBeCloseTo(0.0025, 9)
    expect(kept).toMatchObject({ sha256: photograph.sha256, widthPx: 400, heightPx: 300, scale: { kind: 'length', from: [200, 150], to: [300, 150] } })
  })

  it('a point is moved by arrows, 1 px and 10 px, taken away by Delete, and had back by Undo', async () => {
    draw()
    await addPoint()
    const handle = () => screen.queryByRole('button', { name: /^End 1 of the known length, at / })
    handle()?.focus()
    await userEvent.keyboard('{ArrowRight}{Shift>}{ArrowDown}{/Shift}')
    expect(handle()?.getAttribute('aria-label')).toMatch(/at 201, 160$/)
    await userEvent.keyboard('{Delete}')
    expect(handle()).toBeNull()
    await userEvent.click(screen.getByRole('button', { name: en.screens.pictureBoard.undo }))
    expect(handle()?.getAttribute('aria-label')).toMatch(/at 201, 160$/)
    await userEvent.keyboard('{Control>}z{/Control}')
    expect(handle()?.getAttribute('aria-label')).toMatch(/at 200, 150$/)
    await userEvent.click(screen.getByRole('button', { name: en.screens.pictureBoard.redo }))
    expect(handle()?.getAttribute('aria-label')).toMatch(/at 201, 160$/)
  })

  it('the key for undo works with the focus on a choice as well', async () => {
    draw()
    await addPoint()
    const choice = screen.getByRole('radio', { name: said.scale.kinds.rectangle })
    await userEvent.click(choice)
    choice.focus()
    await userEvent.keyboard('{Control>}zz{/Control}')
    await userEvent.click(screen.getByText(said.scale.kinds.length))
    expect(screen.queryByRole('button', { name: /^End 1 of the known length, at / })).toBeNull()
  })

  it('what is told of the keys is what the hand holds: points, or a brush', async () => {
    draw()
    expect(screen.getByText(said.stageHelp.points)).toBeDefined()
    await step(said.steps.outline)
    await userEvent.click(screen.getByText(said.outline.ways.brush))
    expect(screen.getByText(said.stageHelp.brush)).toBeDefined()
    expect(screen.queryByText(said.stageHelp.points)).toBeNull()
  })
})

describe('what cannot be measured', { timeout: 30_000 }, () => {
  it('a grey photograph is refused to the finder in a sentence and stays open to the hand', async () => {
    draw()
    await step(said.steps.outline)
    await userEvent.click(screen.getByText(said.outline.ways.finder))
    expect(await screen.findByText(en.refusals['measure.no-colour'] ?? '')).toBeDefined()
    expect(screen.getByRole('button', { name: said.keep })).toHaveProperty('disabled', true)
    await userEvent.click(screen.getByText(said.outline.ways.polygon))
    await waitFor(() => expect(screen.queryByText(en.refusals['measure.no-colour'] ?? '')).toBeNull())
  })

  it('a crossed outline gets its sentence and no area', async () => {
    draw()
    await pressAt(`{Enter}${right}${right}{Enter}`)
    await userEvent.type(screen.getByRole('textbox', { name: said.scale.length }), '100 mm')
    await step(said.steps.outline)
    // Down the one side, up the other, and across.
    await pressAt(`{Enter}${down}{Enter}${left}{Shift>}{ArrowUp>5/}{/Shift}{Enter}${down}{Enter}`)
    expect(await screen.findByText(en.refusals['measure.outline-crossed'] ?? '')).toBeDefined()
    expect(screen.queryByText(/cm² ±/)).toBeNull()
  })

  it.each(['0', '-100 mm', '0.01 mm', '30 m'])('a known length of %s gets a sentence and neither area nor grade', async (typed) => {
    const { gradeOf } = draw()
    await pressAt(`{Enter}${right}${right}{Enter}`)
    await userEvent.type(screen.getByRole('textbox', { name: said.scale.length }), typed)
    await step(said.steps.outline)
    await pressAt(`{Enter}${down}{Enter}${left}{Enter}`)
    expect(await screen.findByText(en.refusals['measure.scale-no-length'] ?? '')).toBeDefined()
    expect(screen.queryByText(/cm² ±/)).toBeNull()
    expect(gradeOf).not.toHaveBeenCalled()
    expect(screen.getByRole('button', { name: said.keep })).toHaveProperty('disabled', true)
  })

  it('asks before points are thrown away, and not when there are none', async () => {
    const { onClose } = draw()
    await addPoint()
    await userEvent.click(screen.getByRole('button', { name: said.cancel }))
    expect(onClose).not.toHaveBeenCalled()
    await userEvent.click(screen.getByRole('button', { name: said.discard }))
    expect(onClose).toHaveBeenCalledOnce()
    cleanup()
    const fresh = draw()
    await userEvent.click(screen.getByRole('button', { name: said.cancel }))
    expect(fresh.onClose).toHaveBeenCalledOnce()
  })
})
