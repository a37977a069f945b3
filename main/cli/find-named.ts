import { refuse } from '../../shared-logic/contract/refusal'
import type { RigRow, SurveyRow } from '../../shared-logic/survey/records'
import type { ReadingDesk } from '../desk/open-to-read'
import { everyRig, everySurvey } from './everything'

export type Named = { readonly kind: 'rig'; readonly rig: RigRow } | { readonly kind: 'survey'; readonly survey: SurveyRow }

/** Fewer characters than this are no part of an id. */
const shortestPart = 6

const same = (a: string, b: string): boolean => a.toLocaleLowerCase('en') === b.toLocaleLowerCase('en')
const isPartOf = (part: string, id: string): boolean => part.length >= shortestPart && id.startsWith(part.toLowerCase())

const only = <Item>(found: readonly Item[], name: string): Item => {
  if (found.length > 1) refuse('cli.several-of-that-name', { name, count: found.length })
  return found[0] ?? refuse('cli.nothing-of-that-name', { name })
}

/** What stands under this id, the first part of one, or a name of its own. Refused when it is none or several. */
export const pickNamed = <Item>(all: readonly Item[], name: string, idOf: (item: Item) => string, namesOf: (item: Item) => readonly string[]): Item => {
  const exact = all.filter((each) => [idOf(each), ...namesOf(each)].some((known) => same(known, name)))
  return only(exact.length > 0 ? exact : all.filter((each) => isPartOf(name, idOf(each))), name)
}

/** What a person means: an id or the first part of one, a report's number, or a rig's name. Refused when it is none or several. */
export const findNamed = async (desk: ReadingDesk, name: string, kinds: readonly Named['kind'][]): Promise<Named> => {
  const surveys = kinds.includes('survey') ? await everySurvey(desk) : []
  const rigs = kinds.includes('rig') ? await everyRig(desk) : []
  const all: Named[] = [...rigs.map((rig): Named => ({ kind: 'rig', rig })), ...surveys.map((survey): Named => ({ kind: 'survey', survey }))]
  return pickNamed(all, name, (named) => (named.kind === 'rig' ? named.rig.id : named.survey.id), (named) => [named.kind === 'rig' ? named.rig.rig.name : (named.survey.reportNumber ?? '')])
}
