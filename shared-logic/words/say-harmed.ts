import { harms, type HarmedOriginal } from '../proof/originals'
import type { Words } from './en'
import { say } from './say'

/** The proof names them all. */
const mostNamed = 12

/**
 * Originals that are not as they came in, by name and by what is wrong with them: 'Original missing: “hub.jpg”. Original changed: “strap.jpg”';
 * then those of which no picture can be printed, by their hash in `withoutPicture`.
 */
export const nameHarmed = ({ report }: Pick<Words, 'report'>, harmed: readonly HarmedOriginal[], withoutPicture: ReadonlySet<string>): string => {
  const { harms: words, named } = report.photographs
  const namesOf = (some: readonly HarmedOriginal[]): string => {
    const all = some.map(({ fileName }) => say(named.name, { name: fileName }, 'metric'))
    const names = all.slice(0, mostNamed).join(', ')
    return all.length > mostNamed ? say(named.more, { names, count: all.length - mostNamed }, 'metric') : names
  }
  const byHarm = harms.flatMap((harm) => {
    const some = harmed.filter((each) => each.harm === harm)
    return some.length === 0 ? [] : [say(named.harm, { harm: words[harm], names: namesOf(some) }, 'metric')]
  })
  const unpictured = harmed.filter(({ sha256 }) => withoutPicture.has(sha256))
  return [...byHarm, ...(unpictured.length === 0 ? [] : [say(named.withoutPicture, { names: namesOf(unpictured) }, 'metric')])].join('. ')
}
