import type { Rig } from '../../shared-logic/rig/rig'
import { say } from '../../shared-logic/words/say'
import { useUnits } from '../parts/use-settings'
import { useWords } from '../parts/use-words'
import { factsOf, unknownCount, type Fact, type FactGroup } from './facts'
import type { GroupId } from './fields'
import { sayHullNumber, sayIdentificationNumber } from './number-sentences'
import style from './rig-identity.module.css'

const trailerGroups: readonly GroupId[] = ['plate', 'frame', 'axles', 'brakes', 'coupler', 'wheels', 'lights', 'supports']
const boatGroups: readonly GroupId[] = ['boat', 'engine']

const useNote = ({ path, value }: Fact): string | undefined => {
  const words = useWords()
  if (path === 'trailer.identificationNumber') return sayIdentificationNumber(words, value)
  return path === 'boat.hullIdentificationNumber' ? sayHullNumber(words, value) : undefined
}

const FactEntry = ({ fact }: { readonly fact: Fact }) => {
  const note = useNote(fact)
  const isLong = note !== undefined || fact.path === 'remarks'
  return (
    <div className={isLong ? style.long : style.fact}>
      <dt className={fact.path === 'remarks' ? 'visually-hidden' : undefined}>{fact.label}</dt>
      <dd>{fact.value}{note !== undefined && <span className={style.note}>{note}</span>}</dd>
    </div>
  )
}

interface SheetProps {
  readonly title: string
  readonly groups: readonly FactGroup[]
  /** Said where there is nothing; without it the part is left out. */
  readonly empty?: string
}

/** A sheet of facts, ruled by part: the part's name at the left, its facts beside it. */
const Sheet = ({ title, groups, empty }: SheetProps) => {
  const { groups: titles } = useWords().screens.rig
  if (groups.length === 0 && empty === undefined) return null
  return (
    <section className={style.sheet}>
      <h2>{title}</h2>
      {groups.length === 0 && <p className={style.soft}>{empty}</p>}
      {groups.map(({ id, facts }) => (
        <div key={id} className={style.part}>
          <h3>{titles[id].title}</h3>
          <dl className={style.facts}>{facts.map((fact) => <FactEntry key={fact.path} fact={fact} />)}</dl>
        </div>
      ))}
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
      <Sheet title={rigWords.trailer} groups={factsOf(rig, trailerGroups, words, units)} empty={rigWords.noFacts} />
      <Sheet title={rigWords.boat} groups={factsOf(rig, boatGroups, words, units)} empty={rigWords.noBoat} />
      <Sheet title={rigWords.about} groups={factsOf(rig, ['identity', 'remarks'], words, units)} />
      {unknown > 0 && <p className={style.soft}>{say(rigWords.unknownCount, { count: unknown }, units)}</p>}
    </>
  )
}
