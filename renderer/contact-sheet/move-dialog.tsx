import { Autocomplete, Button as AriaButton, Input, Label, SearchField } from 'react-aria-components'
import { useMemo, useState } from 'react'
import { say } from '../../shared-logic/words/say'
import { Button } from '../parts/button'
import { classNames } from '../parts/class-names'
import { Dialog } from '../parts/dialog'
import fieldStyle from '../parts/field.module.css'
import searchStyle from '../parts/search-field.module.css'
import { useWords } from '../parts/use-words'
import { CheckList } from './check-list'
import type { TargetGroup } from './check-targets'
import style from './move-dialog.module.css'
import { folded, wordsIn } from './folded'
import type { SheetPhotograph } from './sheet-photograph'
import { useFocusAtOnce } from './use-focus-at-once'

interface MoveDialogProps {
  readonly chosen: readonly SheetPhotograph[]
  readonly groups: readonly TargetGroup[]
  readonly counts: ReadonlyMap<string, number>
  readonly onPick: (id: string) => void
  readonly onClose: () => void
}

/** The checks whose name, place or station holds every word. */
const foundIn = (groups: readonly TargetGroup[], find: string): TargetGroup[] => {
  const words = wordsIn(find)
  const isFound = (text: string): boolean => words.every((word) => text.includes(word))
  return groups
    .map((group) => ({ ...group, targets: group.targets.filter(({ title, at }) => isFound(folded(`${title} ${at} ${group.name}`))) }))
    .filter(({ targets }) => targets.length > 0)
}

/** Where those chosen are to go, found by typing; the arrows walk the list while the field keeps the focus. */
export const MoveDialog = ({ chosen, groups, counts, onPick, onClose }: MoveDialogProps) => {
  const { move: said } = useWords().screens.contactSheet
  const [find, setFind] = useState('')
  const field = useFocusAtOnce<HTMLInputElement>()
  const found = useMemo(() => foundIn(groups, find), [groups, find])
  const title = chosen.length === 1 ? say(said.titleOne, { name: chosen[0]?.name ?? '' }, 'metric') : say(said.title, { count: chosen.length }, 'metric')
  return (
    <Dialog title={title} isOpen onClose={onClose} actions={<Button onPress={onClose}>{said.cancel}</Button>}>
      <Autocomplete inputValue={find} onInputChange={setFind}>
        <SearchField className={searchStyle.search ?? ''} autoComplete="off" maxLength={100}>
          <Label className={fieldStyle.label ?? ''}>{said.find}</Label>
          <div className={searchStyle.box}>
            <Input ref={field} className={classNames(fieldStyle.input, searchStyle.input)} />
            <AriaButton className={searchStyle.clear ?? ''} aria-label={said.clear}>×</AriaButton>
          </div>
        </SearchField>
        <div className={style.list}><CheckList label={said.list} groups={found} counts={counts} isWithNowhere={find === ''} onPick={onPick} whenNone={() => said.none} /></div>
      </Autocomplete>
    </Dialog>
  )
}
