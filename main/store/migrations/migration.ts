/** One step of the yard's schema. Numbers stand ten apart and rise; a step that has landed is never edited. */
export interface Migration {
  readonly number: number
  readonly sql: string
}
