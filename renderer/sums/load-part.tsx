import { memo, useMemo } from 'react'
import type { LoadItem } from '../../shared-logic/load/load-items'
import type { Sums } from '../../shared-logic/sums/sums'
import { formatQuantity } from '../../shared-logic/units/convert'
import { measured, type UnitSystem } from '../../shared-logic/units/quantity'
import type { Words } from '../../shared-logic/words/en'
import { say } from '../../shared-logic/words/say'
import { nameOfItem, sayConclusions, sayLoad } from '../../shared-logic/words/sums/load'
import { sayTyres } from '../../shared-logic/words/sums/tyres'
import { useUnits } from '../parts/use-settings'
import { useWords } from '../parts/use-words'
import { massesOf } from './fields'
import { GearRows } from './gear-rows'
import { InputGroup } from './input-group'
import { LimitList } from './limit-list'
import style from './load-part.module.css'
import { Part } from './part'
import { HowWorkedOut, SumsLines, WaitsFor } from './sums-lines'
import { TankRows } from './tank-rows'
import type { SheetFields } from './use-sums-rig'

const massOf = (words: Words, { massKg, lowKg, highKg }: Pick<LoadItem, 'massKg' | 'lowKg' | 'highKg'>, units: UnitSystem): string => {
  if (massKg !== undefined) return formatQuantity('mass', massKg, units)
  if (highKg !== undefined) return say(words.sums.drawing.bounds, { low: measured('mass', lowKg), high: measured('mass', highKg) }, units)
  return lowKg > 0 ? say(words.sums.drawing.atLeast, { low: measured('mass', lowKg) }, units) : words.screens.sums.unknown
}

const Items = ({ sums: { load } }: { readonly sums: Sums }) => {
  const words = useWords()
  const units = useUnits()
  const said = words.screens.sums
  return (
    <table className={style.items}>
      <thead><tr><th scope="col">{said.gearName}</th><th scope="col">{said.gearMass}</th><th scope="col">{said.gearBall}</th></tr></thead>
      <tbody>
        {load.items.map((item) => (
          <tr key={item.id}><th scope="row">{nameOfItem(words, item)}</th><td>{massOf(words, item, units)}</td><td>{item.atM === undefined ? said.unknown : formatQuantity('length', item.atM, units)}</td></tr>
        ))}
      </tbody>
      <tfoot><tr><th scope="row">{words.sums.load.total}</th><td>{massOf(words, load.total, units)}</td></tr></tfoot>
    </table>
  )
}

interface PartProps {
  readonly sheet: SheetFields
  readonly sums: Sums
  readonly rigId: string
}

const LoadInputs = memo(({ sheet, rigId }: Pick<PartProps, 'sheet' | 'rigId'>) => <><InputGroup group={massesOf(sheet.kept)} sheet={sheet} isOpen /><TankRows sheet={sheet} rigId={rigId} /><GearRows sheet={sheet} /></>)
LoadInputs.displayName = 'LoadInputs'

/** Load sheet: what is carried, what each limit leaves, and each tyre at its own load. */
export const LoadPart = memo(({ sheet, sums, rigId }: PartProps) => {
  const words = useWords()
  const units = useUnits()
  const said = words.screens.sums
  const section = useMemo(() => sayLoad(words, sums.load, units), [words, sums.load, units])
  const tyres = useMemo(() => sayTyres(words, sums.tyres, units), [words, sums.tyres, units])
  return (
    <Part id="load" inputs={<LoadInputs sheet={sheet} rigId={rigId} />}>
      <Items sums={sums} />
      {sums.load.total.waitsFor.length > 0 && <WaitsFor fields={sums.load.total.waitsFor} rigId={rigId} />}
      <SumsLines lines={sayConclusions(words, sums.load, units)} rigId={rigId} />
      <h3>{said.limitsTitle}</h3>
      <LimitList sheet={sums.load} rigId={rigId} />
      <HowWorkedOut section={section} />
      <h3>{tyres.title}</h3>
      <SumsLines lines={tyres.lines} rigId={rigId} />
      <HowWorkedOut section={tyres} />
    </Part>
  )
})
LoadPart.displayName = 'LoadPart'
