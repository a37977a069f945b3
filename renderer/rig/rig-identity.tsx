import type { Rig } from '../../shared-logic/rig/rig'
import { say } from '../../shared-logic/words/say'
import { useUnits } from '../parts/use-settings'
import { useWords } from '../parts/use-words'
import { factsOf, unknownCount, type Fact } from './facts'
import type { GroupId } from './fields'
import { sayHullNumber, sayIdentificationNumber } from './number-sentences'
import style from './rig-identity.module.css'

const trailerGroups: readonly GroupId[] = ['plate', 'frame', 'axles', 'brakes', 'coupler', 'wheels', 'lights', 'supports']
const boatGroups: readonly GroupId[] = ['boat', 'engine']

interface FactListProps {
  readonly title: string
  readonly facts: readonly Fact[]
  readonly empty?: string
}

const FactList = ({ title, facts, empty }: FactListProps) => {
  const words = useWords()
  const noteOf = ({ path, value }: Fact): string | undefined => {
    if (path === 'trailer.identificationNumber') return sayIdentificationNumber(words, value)
    return path === 'boat.hullIdentificationNumber' ? sayHullNumber(words, value) : undefined
  }
  if (facts.length === 0 && empty === undefined) return null
  return (
    <section className={style.part}>
      <h2>{title}</h2>
      {facts.length === 0 ? <p className={style.soft}>{empty}</p> : (
        <dl className={style.facts}>
          {facts.map((fact) => {
            const note = noteOf(fact)
            return (
              <div key={fact.path} className={note === undefined ? style.fact : style.long}>
                <dt>{fact.label}</dt>
                <dd>{fact.value}{note !== undefined && <span className={style.note}>{note}</span>}</dd>
              </div>
            )
          })}
        </dl>
      )}
    </section>
  )
}

/** All that is known of a rig, and how much is not. */
export const RigIdentity = ({ rig }: { readonly rig: Rig }) => {
  const words = useWords()
  const units = useUnits()
  const { rig: rigWords } = words.screens
  const unknown = unknownCount(rig)
  return (
    <>
      <FactList title={rigWords.owner} facts={factsOf(rig, ['identity'], words, units)} />
      <FactList title={rigWords.trailer} facts={factsOf(rig, trailerGroups, words, units)} />
      <FactList title={rigWords.boat} facts={factsOf(rig, boatGroups, words, units)} empty={rigWords.noBoat} />
      <FactList title={rigWords.groups.remarks.title} facts={factsOf(rig, ['remarks'], words, units)} />
      {unknown > 0 && <p className={style.soft}>{say(rigWords.unknownCount, { count: unknown }, units)}</p>}
    </>
  )
}
