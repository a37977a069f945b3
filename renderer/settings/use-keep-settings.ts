import { useQueryClient, type UseMutationResult } from '@tanstack/react-query'
import type { InputOf, OutputOf } from '../../shared-logic/contract/contract'
import type { Settings } from '../../shared-logic/survey/settings'
import { keyOf, useMutationOf } from '../client/use-procedure'

/** Told what changes, or how it follows from what is kept at that moment. */
export type KeepSettings = (change: Partial<Settings> | ((kept: Settings) => Partial<Settings>)) => void

/** Keeps a change of some settings: shown at once, saved in turn, so that two quick changes never undo one another. */
export const useKeepSettings = (): { readonly keep: KeepSettings; readonly saving: UseMutationResult<OutputOf<'settings.save'>, Error, InputOf<'settings.save'>> } => {
  const client = useQueryClient()
  const saving = useMutationOf('settings.save', { inTurn: true })
  const keep: KeepSettings = (change) => {
    const key = keyOf('settings.get', {})
    const kept = client.getQueryData<OutputOf<'settings.get'>>(key)
    if (!kept) return
    const settings = { ...kept.settings, ...(typeof change === 'function' ? change(kept.settings) : change) }
    client.setQueryData<OutputOf<'settings.get'>>(key, { ...kept, settings })
    saving.mutate({ settings })
  }
  return { keep, saving }
}
