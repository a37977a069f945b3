/** What was, is and can be done again. Steps of one gesture, such as a drag, are one step back. */
export interface History<State> {
  readonly past: readonly State[]
  readonly now: State
  readonly future: readonly State[]
  readonly gesture: string | undefined
}

const mostSteps = 200

export const begun = <State>(now: State): History<State> => ({ past: [], now, future: [], gesture: undefined })

/** The next state. `gesture` names what it belongs to: the following ones of the same name are taken back with it. */
export const put = <State>(history: History<State>, now: State, gesture?: string): History<State> => {
  if (now === history.now) return history
  const joins = gesture !== undefined && gesture === history.gesture
  return { past: joins ? history.past : [...history.past, history.now].slice(-mostSteps), now, future: [], gesture }
}

export const undone = <State>({ past, now, future, ...rest }: History<State>): History<State> => {
  const before = past.at(-1)
  return before === undefined ? { past, now, future, ...rest } : { past: past.slice(0, -1), now: before, future: [now, ...future], gesture: undefined }
}

export const redone = <State>({ past, now, future, ...rest }: History<State>): History<State> => {
  const [next, ...others] = future
  return next === undefined ? { past, now, future, ...rest } : { past: [...past, now], now: next, future: others, gesture: undefined }
}
