const within = (path: string): HTMLElement | null => document.querySelector<HTMLElement>(`[data-path="${CSS.escape(path)}"]`)

/** Fields that this sheet asks by another one of its own: the row they stand in, or the list the row is to be added to. */
const askedAs = (path: string): readonly string[] => {
  const steps = path.split('.')
  return steps.map((_, taken) => steps.slice(0, steps.length - taken).join('.')).filter((each) => each.includes('.') || each === path || each === 'weighings')
}

/** Unfolds what the field lies in. */
const unfold = (place: HTMLElement): void => {
  for (let at = place.closest('details'); at !== null; at = at.parentElement?.closest('details') ?? null) at.open = true
}

/** Brings the field into view and the focus into it; false when this sheet does not ask for it. */
export const goToField = (path: string): boolean => {
  const place = askedAs(path).map(within).find((found) => found !== null)
  if (!place) return false
  unfold(place)
  place.scrollIntoView({ block: 'center' })
  place.querySelector<HTMLElement>('input, [role="spinbutton"], button, [tabindex]')?.focus({ preventScroll: true })
  return true
}

/** Where everything else is typed. */
export const fieldRoute = (rigId: string): string => `/rigs/${rigId}/edit`
