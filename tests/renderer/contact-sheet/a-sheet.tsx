import { vi } from 'vitest'
import type { Photograph, Survey } from '../../../shared-logic/survey/records'
import { ContactSheetPage } from '../../../renderer/contact-sheet/contact-sheet-page'
import { drawWithDesk, type Answers } from '../window-with-desk'
import { aSurvey, fourPhotographs } from './some-photographs'

/** jsdom lays nothing out: the sheet is given the size of a desk, high enough to hold every cell. */
export const layOut = (): void => {
  vi.spyOn(HTMLElement.prototype, 'clientWidth', 'get').mockReturnValue(900)
  vi.spyOn(HTMLElement.prototype, 'clientHeight', 'get').mockReturnValue(20_000)
  Object.defineProperty(window, 'innerHeight', { value: 20_000, configurable: true })
}

/** A desk that keeps what is done to the photographs of one survey. */
export const drawSheet = (photographs: readonly Photograph[] = fourPhotographs, { survey: more, ...answers }: Answers & { readonly survey?: Partial<Survey> } = {}) => {
  let kept = photographs
  let gone: readonly Photograph[] = []
  const change = (ids: readonly string[], how: (photograph: Photograph) => Photograph) => {
    kept = kept.map((each) => (ids.includes(each.id) ? how(each) : each))
    return { photographs: ids.flatMap((id) => kept.find((each) => each.id === id) ?? []) }
  }
  const one = (photographs: readonly Photograph[]) => {
    const [photograph] = photographs
    if (photograph === undefined) throw new Error('no such photograph')
    return { photograph }
  }
  const drawn = drawWithDesk(<ContactSheetPage surveyId={aSurvey([]).id} />, {
    'surveys.get': () => aSurvey(kept, more),
    'photographs.choose': ({ photographIds, isPrinted }) => change(photographIds, (each) => ({ ...each, isPrinted })),
    'photographs.assign': ({ photographIds, place }) => change(photographIds, (each) => ({ ...each, checkId: place?.checkId, position: place?.position })),
    'photographs.turnAll': ({ turns }) => {
      const wanted = new Map(turns.map(({ photographId, quarterTurns }) => [photographId, quarterTurns]))
      return change([...wanted.keys()], (each) => ({ ...each, quarterTurns: wanted.get(each.id) ?? 0 }))
    },
    'photographs.describe': ({ photographId, caption }) => one(change([photographId], (each) => ({ ...each, caption })).photographs),
    'photographs.order': ({ photographIds }) => {
      kept = photographIds.flatMap((id) => kept.find((each) => each.id === id) ?? [])
      return { photographs: [...kept] }
    },
    'photographs.removeAll': ({ photographIds }) => {
      gone = [...gone, ...kept.filter(({ id }) => photographIds.includes(id))]
      kept = kept.filter(({ id }) => !photographIds.includes(id))
      return {}
    },
    'photographs.restoreAll': ({ photographIds }) => {
      const back = gone.filter(({ id }) => photographIds.includes(id))
      kept = [...kept, ...back]
      return { photographs: back }
    },
    ...answers,
  }, { units: 'metric' })
  return { ...drawn, kept: () => kept }
}
