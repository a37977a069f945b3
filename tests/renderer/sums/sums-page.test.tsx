import { cleanup, fireEvent, screen, waitFor, within } from '@testing-library/react'
import userEvent from '@testing-library/user-event'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import type { Rig } from '../../../shared-logic/rig/rig'
import { defaultSumsSettings } from '../../../shared-logic/sums/settings'
import { sumsOf } from '../../../shared-logic/sums/sums'
import { wholeRig, without } from '../../shared-logic/sums/a-rig'
import { keptRigs, openSheet, rigId, saved } from './a-sheet'

const shareOf = (rig: Rig): string => `${Number(((sumsOf(rig, 'us', defaultSumsSettings).balance.lever?.share ?? 0) * 100).toFixed(1))} %`
const headline = (): string => screen.getByText('Coupling load').closest('div')?.textContent ?? ''
const stemOf = (rig: Rig | undefined): number | undefined => rig?.loading?.stemAftOfBallM
const moved = (stemAftOfBallM: number): Rig => ({ ...wholeRig(), loading: { ...wholeRig().loading, stemAftOfBallM } })

beforeEach(() => {
  window.location.hash = `/rigs/${rigId}/sums`
  Element.prototype.scrollIntoView = () => undefined
  window.scrollTo = () => undefined
})
afterEach(cleanup)

describe('the sums of a rig', { timeout: 60_000 }, () => {
  it('shows the share on the coupling, and moving the boat by the arrow keys changes it at once and keeps the place', async () => {
    const { asked } = openSheet(wholeRig())
    const handle = await screen.findByRole('slider', { name: 'Boat, its stem behind the ball' })
    expect(headline()).toContain(shareOf(wholeRig()))
    fireEvent.keyDown(handle, { key: 'ArrowLeft' })
    fireEvent.keyUp(handle, { key: 'ArrowLeft' })
    await waitFor(() => expect(keptRigs(asked)).toHaveLength(1))
    expect(stemOf(keptRigs(asked)[0])).toBeCloseTo(1.09, 9)
    fireEvent.keyDown(handle, { key: 'ArrowLeft', shiftKey: true })
    await waitFor(() => expect(keptRigs(asked)).toHaveLength(2))
    expect(stemOf(keptRigs(asked)[1])).toBeCloseTo(0.99, 9)
    expect(headline()).toContain(shareOf(moved(0.99)))
    expect(shareOf(moved(0.99))).not.toBe(shareOf(wholeRig()))
    expect(screen.getByRole<HTMLInputElement>('textbox', { name: 'Ball centre to stem' }).value).toBe('0.99 m')
  })

  it('does what the sums propose at one press, and takes it back', async () => {
    const { asked } = openSheet(wholeRig())
    await userEvent.click(await screen.findByRole('button', { name: /^Do it: move the boat/ }))
    expect(headline()).toContain('10 %')
    expect(screen.getByText('The coupling load is where it is wanted.')).toBeDefined()
    await userEvent.click(screen.getByRole('button', { name: 'Undo the last change' }))
    expect(headline()).toContain(shareOf(wholeRig()))
    await waitFor(() => expect(keptRigs(asked).map(stemOf).at(-1)).toBe(1.1))
  })

  it('says what the sums wait for, and leads to the field', async () => {
    openSheet(without(wholeRig(), (rig) => { if (rig.loading) delete rig.loading.stemAftOfBallM }))
    expect(await screen.findByText('not known yet', { selector: 'dd' })).toBeDefined()
    expect(screen.queryByRole('slider', { name: 'Boat, its stem behind the ball' })).toBeNull()
    const balance = screen.getByRole('region', { name: 'Balance' })
    await userEvent.click(within(balance).getByRole('button', { name: 'Ball centre to stem' }))
    expect(document.activeElement).toBe(screen.getByRole('textbox', { name: 'Ball centre to stem' }))
    await userEvent.type(screen.getByRole('textbox', { name: 'Ball centre to stem' }), '1.1')
    expect(headline()).toContain(shareOf(wholeRig()))
  })

  it('refuses at its field what cannot be right, keeps what was typed, and lets no number rest on it', async () => {
    const { asked } = openSheet(wholeRig())
    const field = await screen.findByRole<HTMLInputElement>('textbox', { name: 'Ball centre to axle' })
    fireEvent.change(field, { target: { value: '0.2 m' } })
    expect(await screen.findByText(/an axle would stand ahead of the ball/)).toBeDefined()
    expect(field.value).toBe('0.2 m')
    expect(headline()).toContain('not known yet')
    fireEvent.change(field, { target: { value: '-5 m' } })
    expect(await screen.findByText(/^More than 0 m is needed for “Ball centre to axle”/)).toBeDefined()
    expect(keptRigs(asked)).toEqual([])
    fireEvent.change(field, { target: { value: '5.1 m' } })
    await waitFor(() => expect(keptRigs(asked).map(({ trailer }) => trailer.ballToAxleM)).toEqual([5.1]))
    expect(screen.queryByText(/^More than 0 m/)).toBeNull()
  })

  it('keeps what was typed when the desk does not, says why, and tries again', async () => {
    let isBusy = true
    const { asked } = openSheet(wholeRig(), { 'rigs.save': (input) => (isBusy ? { ok: false as const, refusal: { code: 'door.busy' } } : saved(input)) })
    const field = await screen.findByRole<HTMLInputElement>('textbox', { name: 'Unladen mass of the trailer' })
    fireEvent.change(field, { target: { value: '500 kg' } })
    expect(await screen.findByText(/^Not kept: /)).toBeDefined()
    expect(field.value).toBe('500 kg')
    isBusy = false
    await userEvent.click(screen.getByRole('button', { name: 'Try again' }))
    await screen.findByText('Kept')
    expect(keptRigs(asked).map(({ trailer }) => trailer.massKg)).toEqual([500, 500])
  })

  it('keeps rapid changes in the order they were made', async () => {
    const { asked } = openSheet(wholeRig())
    const field = await screen.findByRole('textbox', { name: 'Unladen mass of the trailer' })
    for (const mass of ['451 kg', '452 kg', '453 kg']) fireEvent.change(field, { target: { value: mass } })
    await waitFor(() => expect(keptRigs(asked).map(({ trailer }) => trailer.massKg)).toEqual([451, 452, 453]))
  })

  it('adds gear once it has a name and a mass, and a strap with its rating', async () => {
    const { asked } = openSheet(wholeRig())
    const gear = await screen.findByRole('group', { name: 'New gear' })
    expect(within(gear).getByRole<HTMLButtonElement>('button', { name: 'Add gear' }).disabled).toBe(true)
    fireEvent.change(within(gear).getByRole('textbox', { name: 'What it is' }), { target: { value: 'Cool box' } })
    fireEvent.change(within(gear).getByRole('textbox', { name: 'Mass' }), { target: { value: '25 kg' } })
    fireEvent.change(within(gear).getByRole('textbox', { name: 'Behind the stem' }), { target: { value: '3 m' } })
    await userEvent.click(within(gear).getByRole('button', { name: 'Add gear' }))
    await waitFor(() => expect(keptRigs(asked).at(-1)?.loading?.gear?.at(-1)).toEqual({ name: 'Cool box', massKg: 25, aftOfStemM: 3 }))
    await userEvent.click(screen.getByRole('button', { name: 'Add a strap' }))
    fireEvent.change(await screen.findByRole('textbox', { name: 'Working load limit on its label' }), { target: { value: '7000 N' } })
    await waitFor(() => expect(keptRigs(asked).at(-1)?.tieDown?.straps).toEqual([{ position: 'transom', place: 'transom', route: 'direct', ratedN: 7000 }]))
  })
})
