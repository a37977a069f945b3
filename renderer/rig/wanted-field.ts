/** What a link to one field of the register carries in the history beside the form's address. */
interface WantedField {
  readonly field: string
  /** Where the surveyor came from, and goes back to. */
  readonly back: string
}

export const wantField = (path: string, back: string): WantedField => ({ field: path, back })

const isWanted = (state: unknown): state is WantedField =>
  typeof state === 'object' && state !== null && 'field' in state && typeof state.field === 'string' && 'back' in state && typeof state.back === 'string'

/** The field a link asked for, and the way back; a reload keeps both. */
export const wantedField = (): WantedField | undefined => {
  const state: unknown = window.history.state
  return isWanted(state) ? state : undefined
}
