const within = (path: string): HTMLElement | null => document.querySelector<HTMLElement>(`[data-path="${CSS.escape(path)}"]`)

/** Fields that this sheet asks by another one of its own. */
const askedAs = (path: string): readonly string[] => [path, ...(path.startsWith('tieDown.straps') ? ['tieDown.straps'] : []), path.replace(/\.(\d+)(\..*)?$/, '.$1')]

/** Brings the field into view and the focus into it; false when this sheet does not ask for it. */
export const goToField = (path: string): boolean => {
  const place = askedAs(path).map(within).find((found) => found !== null)
  if (!place) return false
  place.scrollIntoView({ block: 'center' })
  place.querySelector<HTMLElement>('input, button, [tabindex]')?.focus({ preventScroll: true })
  return true
}

/** Where everything else is typed. */
export const fieldRoute = (rigId: string): string => `/rigs/${rigId}/edit`
