/** What a link to one check carries in the history beside the walk's address. */
interface WantedCheck {
  readonly check: string
}

export const wantCheck = (key: string): WantedCheck => ({ check: key })

const isWanted = (state: unknown): state is WantedCheck => typeof state === 'object' && state !== null && 'check' in state && typeof state.check === 'string'

/** The check a link asked for; told once, so that a reload opens where the surveyor stood last. */
export const takeWantedCheck = (): string | undefined => {
  const state: unknown = window.history.state
  if (!isWanted(state)) return undefined
  window.history.replaceState(null, '')
  return state.check
}
