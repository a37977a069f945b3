import { cleanup, screen, waitFor } from '@testing-library/react'
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
