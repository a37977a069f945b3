/** Brings a field of the form into view and the focus into it. */
export const goToField = (path: string): void => {
  const field = document.querySelector(`[data-path="${CSS.escape(path)}"]`)
  const input = field?.querySelector<HTMLElement>('input:checked') ?? field?.querySelector<HTMLElement>('input:not([type="hidden"], [tabindex="-1"]), textarea, button')
  input?.scrollIntoView({ block: 'center' })
  input?.focus()
}
