import { cleanup, fireEvent, screen, waitFor } from '@testing-library/react'
import userEvent from '@testing-library/user-event'
import { afterEach, describe, expect, it } from 'vitest'
import { SettingsPage } from '../../../renderer/settings/settings-page'
import { defaultSettings, settingsSchema } from '../../../shared-logic/survey/settings'
import { drawWithDesk } from '../window-with-desk'

afterEach(cleanup)

const about = { version: '0.1.0', catalogueVersion: '2026.1', folder: 'a folder', today: '2026-11-25', zone: 'Europe/Berlin', rigCount: 3, surveyCount: 1 }

const draw = () => {
  let kept = defaultSettings
  return drawWithDesk(<SettingsPage />, {
    'yard.about': () => about,
    'settings.get': () => ({ settings: kept, saved: true }),
    'settings.save': ({ settings }) => {
      kept = settingsSchema.parse({ ...kept, ...settings })
      return { settings: kept }
    },
  })
}
const savedInputs = (asked: readonly { name: string; input: unknown }[]): unknown[] => asked.filter(({ name }) => name === 'settings.save').map(({ input }) => input)

describe('settings', { timeout: 30_000 }, () => {
  it('the European rule book proposes metric units and A4', async () => {
    const { asked } = draw()
    await userEvent.click(await screen.findByRole('radio', { name: 'Europe' }))
    await waitFor(() => expect(savedInputs(asked)).toEqual([{ settings: { ...defaultSettings, ruleBook: 'eu', units: 'metric', paper: 'A4' } }]))
  })

  it('a choice made straight after typing a name does not undo the name', async () => {
    const { asked } = draw()
    await userEvent.type(await screen.findByRole('textbox', { name: 'Name of the surveyor' }), 'Ada Quist')
    await userEvent.click(screen.getByRole('radio', { name: 'Night' }))
    await waitFor(() => expect(savedInputs(asked)).toHaveLength(2))
    expect(savedInputs(asked).at(-1)).toEqual({ settings: { ...defaultSettings, surveyorName: 'Ada Quist', theme: 'night' } })
  })

  it('says where the yard is kept', async () => {
    draw()
    expect(await screen.findByText('a folder')).toBeDefined()
  })
})

describe('reserve and coupling load', { timeout: 30_000 }, () => {
  const field = (name: string) => screen.getByRole<HTMLInputElement>('textbox', { name })
  const write = (name: string, value: string): void => {
    fireEvent.change(field(name), { target: { value } })
    fireEvent.blur(field(name))
  }
  const sums = (asked: readonly { name: string; input: unknown }[]) => settingsSchema.partial().parse(Object(savedInputs(asked).at(-1)).settings).sums

  it('are kept for the rule book in use, the other’s left alone', async () => {
    const { asked } = draw()
    await screen.findByRole('textbox', { name: 'Reserve wanted' })
    write('Reserve wanted', '20')
    write('Good up to', '12 %')
    await waitFor(() => expect(savedInputs(asked)).toHaveLength(2))
    expect(sums(asked)).toEqual({ reserve: 0.2, balance: { ...defaultSettings.sums.balance, us: { ...defaultSettings.sums.balance.us, passTo: 0.12 } } })
    await userEvent.click(screen.getByRole('button', { name: 'Back to the usual figures' }))
    await waitFor(() => expect(sums(asked)).toEqual(defaultSettings.sums))
  })

  it('are refused by name where they cannot be right, and nothing is changed', async () => {
    const { asked } = draw()
    await screen.findByRole('textbox', { name: 'Reserve wanted' })
    write('Reserve wanted', '80 %')
    expect(screen.getByText('Reserve wanted: at most 50 % can be right. Nothing was changed.')).toBeDefined()
    write('Reserve wanted', '15 %')
    write('Good from', '12 %')
    expect(screen.getByText(/^“Good from” lies above “Aimed at”. Make it 10 % or less/)).toBeDefined()
    write('Good from', '')
    expect(screen.getByText(/^Good from: enter a figure/)).toBeDefined()
    expect(field('Good from').value).toBe('')
    expect(savedInputs(asked).map((input) => settingsSchema.partial().parse(Object(input).settings).sums?.balance.us.passFrom).filter((share) => share !== 0.07)).toEqual([])
  })
})
