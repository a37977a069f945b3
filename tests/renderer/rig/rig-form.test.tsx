import { cleanup, screen, waitFor, within } from '@testing-library/react'
import userEvent from '@testing-library/user-event'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { RigFormPage } from '../../../renderer/rig/rig-form-page'
import type { InputOf } from '../../../shared-logic/contract/contract'
import { drawWithDesk } from '../window-with-desk'

const rigId = '0197a000-0000-7000-8000-000000000001'

beforeEach(() => {
  window.location.hash = '/rigs/new'
  Element.prototype.scrollIntoView = () => undefined
  window.scrollTo = () => undefined
})
afterEach(cleanup)

const saved = ({ rig }: InputOf<'rigs.save'>) => ({ id: rigId, rig, surveyCount: 0 })

describe('registering a rig', { timeout: 30_000 }, () => {
  it('keeps all that was typed when the desk refuses, and says why at the field', async () => {
    drawWithDesk(<RigFormPage />, {
      'rigs.save': () => ({ ok: false as const, refusal: { code: 'door.busy', field: 'rig.trailer.maker' } }),
    }, { units: 'metric' })
    await userEvent.type(await screen.findByLabelText('Name of the rig'), 'Hire 12')
    await userEvent.type(screen.getByLabelText('Unladen mass'), '1146 lb')
    await userEvent.click(screen.getByRole('button', { name: 'Save the rig' }))
    const summary = await screen.findByRole('alert')
    expect(within(summary).getByRole('button', { name: /^Maker: Too much is being handed in/ })).toBeDefined()
    expect(document.activeElement).toBe(summary)
    expect(screen.getByDisplayValue('Hire 12')).toBeDefined()
    expect(screen.getByDisplayValue('1146 lb')).toBeDefined()
  })

  it('asks the desk for nothing while a figure cannot be read, and leads to that figure', async () => {
    const { asked } = drawWithDesk(<RigFormPage />, { 'rigs.save': saved })
    await userEvent.type(await screen.findByLabelText('Name of the rig'), 'Hire 12')
    await userEvent.type(screen.getByLabelText('Unladen mass'), '12 stone')
    await userEvent.click(screen.getByRole('button', { name: 'Save the rig' }))
    await userEvent.click(await screen.findByRole('button', { name: /^Unladen mass: “stone” is not a unit/ }))
    expect(document.activeElement).toBe(screen.getByLabelText('Unladen mass'))
    expect(asked.filter(({ name }) => name === 'rigs.save')).toEqual([])
  })

  it('saves what is known in SI, leaves the rest unknown, and goes to the rig', async () => {
    const { asked } = drawWithDesk(<RigFormPage />, { 'rigs.save': saved }, { units: 'us' })
    await userEvent.type(await screen.findByLabelText('Name of the rig'), 'Hire 12')
    await userEvent.click(within(screen.getByRole('radiogroup', { name: 'Axles' })).getByRole('radio', { name: 'Two' }))
    await userEvent.click(within(screen.getByRole('radiogroup', { name: 'Brakes' })).getByRole('radio', { name: 'Surge (overrun)' }))
    await userEvent.click(within(screen.getByRole('radiogroup', { name: 'Discs or drums' })).getByRole('radio', { name: 'Discs' }))
    await userEvent.type(screen.getByLabelText('Ball diameter'), '2 in')
    await userEvent.click(screen.getByRole('button', { name: 'Save the rig' }))
    await waitFor(() => expect(window.location.hash).toBe(`#/rigs/${rigId}`))
    expect(asked.find(({ name }) => name === 'rigs.save')?.input).toEqual({ rig: { name: 'Hire 12', trailer: { axleCount: 2, brakes: 'surge', brakeForm: 'disc', ballDiameterM: 0.0508 } } })
  })

  it('asks for discs or drums only where there are brakes', async () => {
    drawWithDesk(<RigFormPage />, {})
    const brakes = await screen.findByRole('radiogroup', { name: 'Brakes' })
    expect(screen.queryByRole('radiogroup', { name: 'Discs or drums' })).toBeNull()
    await userEvent.click(within(brakes).getByRole('radio', { name: 'Electric' }))
    expect(screen.getByRole('radiogroup', { name: 'Discs or drums' })).toBeDefined()
    await userEvent.click(within(brakes).getByRole('radio', { name: 'Not known' }))
    expect(screen.queryByRole('radiogroup', { name: 'Discs or drums' })).toBeNull()
  })

  it('asks before what was typed is left behind, and stays when told to', async () => {
    drawWithDesk(<RigFormPage />, {})
    await userEvent.type(await screen.findByLabelText('Name of the rig'), 'Hire 12')
    await userEvent.click(screen.getByRole('link', { name: 'Cancel' }))
    await userEvent.click(await screen.findByRole('button', { name: 'Stay here' }))
    expect(window.location.hash).toBe('#/rigs/new')
    expect(screen.getByDisplayValue('Hire 12')).toBeDefined()
    await userEvent.click(screen.getByRole('link', { name: 'Cancel' }))
    await userEvent.click(await screen.findByRole('button', { name: 'Leave, and lose it' }))
    await waitFor(() => expect(window.location.hash).toBe('#/'))
  })
  it('asks as well when the address changes under it, as by the back button', async () => {
    drawWithDesk(<RigFormPage />, {})
    await userEvent.type(await screen.findByLabelText('Name of the rig'), 'Hire 12')
    window.location.hash = '/settings'
    expect(await screen.findByRole('alertdialog', { name: 'Leave without saving?' })).toBeDefined()
    expect(window.location.hash).toBe('#/rigs/new')
  })
})
