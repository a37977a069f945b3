import type { QueryClient } from '@tanstack/react-query'
import type { OutputOf } from '../../shared-logic/contract/contract'
import type { Photograph } from '../../shared-logic/survey/records'
import { keyOf } from '../client/use-procedure'

export type Photographs = readonly Photograph[]

/** One act: how the sheet looks at once, and what the desk is asked, which answers the photographs it changed. */
export interface Act {
  readonly look: (photographs: Photographs) => Photographs
  readonly ask: () => Promise<Photographs>
}

/**
 * Acts done at once on the window's copy of the survey and asked of the desk one after the other. What the desk made
 * of them is taken over when nothing waits any more; after a refusal the survey is fetched as it is.
 */
export class ActQueue {
  readonly #client: QueryClient
  readonly #surveyId: string
  readonly #onProblem: (problem: unknown) => void
  readonly #answers = new Map<string, Photograph>()
  #behind: Promise<void> = Promise.resolve()
  #waiting = 0
  #isWrong = false

  constructor(client: QueryClient, surveyId: string, onProblem: (problem: unknown) => void) {
    this.#client = client
    this.#surveyId = surveyId
    this.#onProblem = onProblem
  }

  readonly run = ({ look, ask }: Act): void => {
    this.#waiting += 1
    this.#onProblem(undefined)
    // A fetch under way may carry the survey as it was before.
    void this.#client.cancelQueries({ queryKey: this.#key })
    this.#revise(look)
    this.#behind = this.#behind.then(() => this.#ask(ask))
  }

  get #key() {
    return keyOf('surveys.get', { surveyId: this.#surveyId })
  }

  #revise(how: Act['look']): void {
    this.#client.setQueryData<OutputOf<'surveys.get'>>(this.#key, (survey) => survey && { ...survey, photographs: [...how(survey.photographs)] })
  }

  async #ask(ask: Act['ask']): Promise<void> {
    try {
      for (const photograph of await ask()) this.#answers.set(photograph.id, photograph)
    } catch (problem) {
      this.#isWrong = true
      this.#onProblem(problem)
    }
    this.#waiting -= 1
    if (this.#waiting === 0) await this.#settle()
  }

  async #settle(): Promise<void> {
    const answers = new Map(this.#answers)
    this.#answers.clear()
    if (!this.#isWrong) return this.#revise((photographs) => photographs.map((each) => answers.get(each.id) ?? each))
    this.#isWrong = false
    await this.#client.invalidateQueries({ queryKey: this.#key })
  }
}
