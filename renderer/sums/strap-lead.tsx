import { useState } from 'react'
import { leadOf } from '../../shared-logic/lashing/geometry'
import type { Strap } from '../../shared-logic/rig/tie-down'
import { measured } from '../../shared-logic/units/quantity'
import { say } from '../../shared-logic/words/say'
import { ChoiceField } from '../parts/choice-field'
import { useUnits } from '../parts/use-settings'
import { useWords } from '../parts/use-words'
import type { SumsInput } from './fields'
import { BoundField, WaitingNote } from './sums-field'
import style from './sums-inputs.module.css'
import type { SheetFields } from './use-sums-rig'

const ways = ['angles', 'ends', 'unknown'] as const
type Way = (typeof ways)[number]

/** Less than this off the long axis is along it, to the tenth of a degree that is shown. */
const straightRad = Math.PI / 3600

type Angles = NonNullable<Strap['angles']>

/** The angles that two measured ends come to. */
const anglesOf = (strap: Strap): Angles | undefined => {
  const lead = leadOf(strap)
  return lead && { downRad: lead.downRad, offRad: lead.offRad, leads: lead.pull.aft > 0 ? 'aft' : 'forward', side: lead.pull.right < 0 ? 'left' : 'right' }
}

const angleInputs = (path: string): readonly SumsInput[] => [
  { kind: 'quantity', path: `${path}.downRad`, quantity: 'angle' },
  { kind: 'quantity', path: `${path}.offRad`, quantity: 'angle' },
  { kind: 'choice', path: `${path}.leads`, options: ['forward', 'aft'], words: 'leadings', isNeeded: true },
  { kind: 'choice', path: `${path}.side`, options: ['left', 'right'], words: 'sides', isNeeded: true },
]

const ByAngles = ({ sheet, path }: { readonly sheet: SheetFields; readonly path: string }) => (
  <>
    <div className={style.fields}>{angleInputs(`${path}.angles`).map((input) => <BoundField key={input.path} sheet={sheet} input={input} />)}</div>
    <WaitingNote sheet={sheet} below={`${path}.angles`} />
  </>
)

const End = ({ sheet, path, end }: { readonly sheet: SheetFields; readonly path: string; readonly end: 'boat' | 'trailer' }) => {
  const { straps: said } = useWords().screens.sums
  return (
    <fieldset className={style.end} data-path={`${path}.${end}`}>
      <legend>{said.ends[end]}</legend>
      <div className={style.pairs}>
        <div className={style.three}>
          {(['aftOfBallM', 'toRightM', 'heightM'] as const).map((name) => <BoundField key={name} sheet={sheet} label={said.point[name]} input={{ kind: 'quantity', path: `${path}.${end}.${name}`, quantity: 'length' }} />)}
        </div>
        <WaitingNote sheet={sheet} below={`${path}.${end}`} />
      </div>
    </fieldset>
  )
}

const ByEnds = ({ sheet, path, strap }: { readonly sheet: SheetFields; readonly path: string; readonly strap: Strap }) => {
  const { straps: said, leadings, sides } = useWords().screens.sums
  const units = useUnits()
  const lead = strap.boat && strap.trailer && leadOf(strap)
  const angles = anglesOf(strap)
  return (
    <>
      <p className={style.soft}>{strap.route === 'over the top' ? said.pointsOfOneSide : said.pointsHelp}</p>
      <End sheet={sheet} path={path} end="boat" />
      <End sheet={sheet} path={path} end="trailer" />
      {lead && angles && (
        <p className={style.soft}>{say(lead.offRad < straightRad ? said.followsStraight : said.follows, {
          down: measured('angle', lead.downRad), off: measured('angle', lead.offRad), length: measured('length', lead.lengthM ?? 0), leads: leadings[angles.leads].toLowerCase(), side: sides[angles.side].toLowerCase(),
        }, units)}</p>
      )}
      {!lead && strap.angles && <p className={style.soft}>{said.anglesUntilThen}</p>}
    </>
  )
}

interface StrapLeadProps {
  readonly sheet: SheetFields
  readonly strap: Strap
  readonly path: string
  /** The whole strap as it should be. */
  readonly onChange: (strap: Strap) => void
}

/** How a strap leads: by angles, or by where its two ends are; ends count before angles, so only one of the two is asked. */
export const StrapLeadFields = ({ sheet, strap, path, onChange }: StrapLeadProps) => {
  const { straps: said } = useWords().screens.sums
  const [chosen, setChosen] = useState<Way>()
  const way = strap.boat ?? strap.trailer ? 'ends' : strap.angles && chosen !== 'ends' ? 'angles' : chosen
  const choose = (next: Way): void => {
    setChosen(next)
    if (next !== 'ends') onChange({ ...strap, boat: undefined, trailer: undefined, angles: next === 'angles' ? anglesOf(strap) : undefined })
  }
  return (
    <div className={style.row} data-path={way === 'ends' ? undefined : `${path}.boat`}>
      <ChoiceField label={said.known} options={ways.map((value) => ({ value, label: said.ways[value], isQuiet: value === 'unknown' }))} value={way} onChange={choose} />
      {way === 'angles' && <ByAngles sheet={sheet} path={path} />}
      {way === 'ends' && <ByEnds sheet={sheet} path={path} strap={strap} />}
    </div>
  )
}
