import { cleanup, screen } from '@testing-library/react'
import userEvent from '@testing-library/user-event'
import { useState } from 'react'
import { afterEach, describe, expect, it } from 'vitest'
import { useUnits } from '../../../renderer/parts/use-settings'
import { QuantityField } from '../../../renderer/parts/quantity-field'
import type { Quantity } from '../../../shared-logic/units/quantity'
import type { Settings } from '../../../shared-logic/survey/settings'
import { drawWithDesk } from '../window-with-desk'

afterEach(cleanup)

const drawField = async (quantity: Quantity, settings: Partial<Settings>, first?: number) => {
  const told: { si: number | undefined; problem: string | undefined }[] = []
  const Held = () => {
    const [value, setValue] = useState(first)
    return <><output>{useUnits()}</output><QuantityField label="Pit depth" quantity={quantity} value={value} onChange={(si, problem) => { told.push({ si, problem }); setValue(si) }} /></>
  }
  drawWithDesk(<Held />, {}, settings)
  await screen.findByText(settings.units ?? 'us')
  return told
}

describe('a quantity typed as people write it', { timeout: 30_000 }, () => {
  it('understands 3/8 in and says it in the reader’s own millimetres', async () => {
    const told = await drawField('smallLength', { units: 'metric' })
    await userEvent.type(await screen.findByRole('textbox', { name: 'Pit depth' }), '3/8 in')
    expect(told.at(-1)?.si).toBeCloseTo(0.009525, 9)
    expect(await screen.findByText(/^= 9\.5\d? mm$/)).toBeDefined()
  })

  it('takes a bare number in the unit the reader is shown', async () => {
    const told = await drawField('mass', { units: 'us' })
    const field = await screen.findByRole('textbox', { name: 'Pit depth' })
    await userEvent.type(field, '1000')
    expect(await screen.findByText('= 1,000 lb')).toBeDefined()
    expect(told.at(-1)?.si).toBeCloseTo(453.59237, 6)
  })

  it('names the units it knows when it is given another, and keeps what was typed', async () => {
    const told = await drawField('smallLength', { units: 'metric' })
    const field = await screen.findByRole<HTMLInputElement>('textbox', { name: 'Pit depth' })
    await userEvent.type(field, '2 furlongs')
    await userEvent.tab()
    expect(screen.getByText(/“furlongs” is not a unit known here/)).toBeDefined()
    expect(field.getAttribute('aria-invalid')).toBe('true')
    expect(field.value).toBe('2 furlongs')
    expect(told.at(-1)?.si).toBeUndefined()
    expect(told.at(-1)?.problem).toContain('furlongs')
  })

  it('shows a kept value in the reader’s units and leaves it alone while nothing is typed', async () => {
    const told = await drawField('mass', { units: 'metric' }, 1974)
    expect(await screen.findByDisplayValue('1,974 kg')).toBeDefined()
    await userEvent.click(screen.getByRole('textbox'))
    await userEvent.tab()
    expect(told).toEqual([])
  })

  it('is empty, not nought, when nothing is known', async () => {
    const told = await drawField('mass', { units: 'metric' }, 12)
    await userEvent.clear(await screen.findByDisplayValue('12 kg'))
    await userEvent.tab()
    expect(told.at(-1)).toEqual({ si: undefined, problem: undefined })
    expect(screen.getByRole('textbox').getAttribute('aria-invalid')).toBeNull()
  })
})
