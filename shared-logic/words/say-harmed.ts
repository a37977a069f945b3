import { harms, type HarmedOriginal } from '../proof/originals'
import type { Words } from './en'
import { say } from './say'

/** The proof names them all. */
const mostNamed = 12

/** Originals that are not as they came in, by name and by what is wrong with them: 'Original missing: “hub.jpg”. Original changed: “strap.jpg”'. */
export const nameHarmed = ({ report }: Pick<Words, 'report'>, harmed: readonly HarmedOriginal[]): string => {
  const { harms: words, named } = report.photographs
  return harms.flatMap((harm) => {
    const all = harmed.filter((each) => each.harm === harm).map(({ fileName }) => say(named.name, { name: fileName }, 'metric'))
    if (all.length === 0) return []
    const names = all.slice(0, mostNamed).join(', ')
    return [say(named.harm, { harm: words[harm], names: all.length > mostNamed ? say(named.more, { names, count: all.length - mostNamed }, 'metric') : names }, 'metric')]
  }).join('. ')
}
