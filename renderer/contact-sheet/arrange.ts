import { stations, type StationId } from '../../shared-logic/survey/station'
import { folded, wordsIn } from './folded'
import { isOfFinding, type SheetPhotograph } from './sheet-photograph'

export const sheetSorts = ['walk', 'taken', 'arrival', 'own'] as const
export type SheetSort = (typeof sheetSorts)[number]

export const sheetShows = ['all', 'no check', 'not printed', 'warned', 'alike', 'findings'] as const
export type SheetShow = (typeof sheetShows)[number]

/** What the surveyor wants to see, and how. */
export interface SheetWish {
  readonly find: string
  readonly sort: SheetSort
  readonly show: SheetShow
  readonly station: StationId | 'all'
}

const isShown: Readonly<Record<SheetShow, (each: SheetPhotograph) => boolean>> = {
  all: () => true,
  'no check': ({ photograph }) => photograph.checkId === undefined,
  'not printed': ({ photograph }) => !photograph.isPrinted,
  warned: ({ warnings }) => warnings.length > 0,
  alike: ({ alike }) => alike.length > 0,
  findings: isOfFinding,
}

/** Every word is in the caption, the file's name or the name of its check. */
const isFound = ({ photograph, where }: SheetPhotograph, words: readonly string[]): boolean => {
  const text = folded(`${photograph.caption} ${photograph.fileName} ${where}`)
  return words.every((word) => text.includes(word))
}

/** Walking order by place; a check that is no longer asked comes after, what belongs to none last. */
const rankOf = (walk: ReadonlyMap<string, number>) => ({ owner, photograph }: SheetPhotograph): number =>
  owner === undefined ? walk.size + (photograph.checkId === undefined ? 1 : 0) : (walk.get(owner.key) ?? walk.size)

/** As the camera's clock showed it, whatever its zone, or ours for what this program took; without a time last. */
const takenOf = ({ taken }: SheetPhotograph): string => taken?.at.slice(0, 19) ?? '9'
const arrivalOf = ({ photograph: { addedAt, id } }: SheetPhotograph): string => `${addedAt} ${id}`
const byText = (textOf: (each: SheetPhotograph) => string) => (a: SheetPhotograph, b: SheetPhotograph): number => (textOf(a) < textOf(b) ? -1 : textOf(a) > textOf(b) ? 1 : 0)

/** `all` stands in the survey's own order, and that is kept among equals. `walk` is the place of each check in walking order, by key. */
const sorted = (all: readonly SheetPhotograph[], sort: SheetSort, walk: ReadonlyMap<string, number>): readonly SheetPhotograph[] => {
  if (sort === 'own') return all
  if (sort === 'taken') return all.toSorted(byText(takenOf))
  if (sort === 'arrival') return all.toSorted(byText(arrivalOf))
  const rank = rankOf(walk)
  return all.toSorted((a, b) => rank(a) - rank(b))
}

/** The photographs wanted, in the order wanted. */
export const arrange = (all: readonly SheetPhotograph[], { find, sort, show, station }: SheetWish, walk: ReadonlyMap<string, number>): readonly SheetPhotograph[] => {
  const words = wordsIn(find)
  const wanted = all.filter((each) => isShown[show](each) && (station === 'all' || each.station === station) && isFound(each, words))
  return sorted(wanted, sort, walk)
}

/** The stations that have photographs, in walking order. */
export const stationsShown = (all: readonly SheetPhotograph[]): StationId[] => {
  const there = new Set(all.map(({ station }) => station))
  return stations.filter((station) => there.has(station))
}
