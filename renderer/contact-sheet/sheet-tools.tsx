import { useState } from 'react'
import { Button } from '../parts/button'
import { useWords } from '../parts/use-words'
import { SearchField } from '../parts/search-field'
import { SelectField } from '../parts/select-field'
import type { StationId } from '../../shared-logic/survey/station'
import { sheetShows, sheetSorts, type SheetWish } from './arrange'
import style from './sheet-tools.module.css'

interface SheetToolsProps {
  readonly wish: SheetWish
  readonly onWish: (wish: SheetWish) => void
  readonly stations: readonly StationId[]
}

/** What is to be seen of the sheet, and in which order. */
export const SheetTools = ({ wish, onWish, stations }: SheetToolsProps) => {
  const words = useWords()
  const said = words.screens.contactSheet
  const [isOpen, setOpen] = useState(false)
  return (
    <search className={style.tools} data-open={isOpen}>
      <SearchField label={said.find} clearLabel={said.clearFind} value={wish.find} onChange={(find) => onWish({ ...wish, find })} />
      <span className={style.more}><Button aria-expanded={isOpen} onPress={() => setOpen(!isOpen)}>{said.more}</Button></span>
      <SelectField label={said.sort} value={wish.sort} options={sheetSorts.map((value) => ({ value, label: said.sorts[value] }))} onChange={(sort) => onWish({ ...wish, sort })} />
      <SelectField label={said.show} value={wish.show} options={sheetShows.map((value) => ({ value, label: said.shows[value] }))} onChange={(show) => onWish({ ...wish, show })} />
      <SelectField
        label={said.station} value={wish.station} onChange={(station) => onWish({ ...wish, station })}
        options={[{ value: 'all' as const, label: said.allStations }, ...stations.map((value) => ({ value, label: words.stations[value] }))]}
      />
    </search>
  )
}
