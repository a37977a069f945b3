import { memo, useMemo } from 'react'
import { Collection, Header, ListBox, ListBoxItem, ListBoxSection, ListLayout, useDragAndDrop, Virtualizer, type DropTarget, type Key, type TextDropItem } from 'react-aria-components'
import { say } from '../../shared-logic/words/say'
import { useWords } from '../parts/use-words'
import { nowhere, type CheckTarget, type TargetGroup } from './check-targets'
import style from './check-list.module.css'
import { photographDrag } from './picture-grid'

interface CheckListProps {
  readonly label: string
  readonly groups: readonly TargetGroup[]
  readonly counts: ReadonlyMap<string, number>
  /** Pressed, or struck with Enter. */
  readonly onPick: (id: string) => void
  /** Photographs let go over a check; absent where none are dragged. */
  readonly onDropped?: (ids: readonly string[], id: string) => void
  /** Whether 'no check' heads the list. */
  readonly isWithNowhere: boolean
  readonly whenNone?: () => string
}

const layoutOptions = { rowSize: 48, headingSize: 32 }

/** What was let go over a check. The list takes no other drag. */
const useDropping = (onDropped: CheckListProps['onDropped']) => {
  const options = useMemo(() => ({
    isDisabled: onDropped === undefined,
    acceptedDragTypes: [photographDrag],
    getDropOperation: (target: DropTarget) => (target.type === 'item' && target.dropPosition === 'on' ? ('move' as const) : ('cancel' as const)),
    onItemDrop: async ({ items, target }: { items: readonly { readonly kind: string }[]; target: { readonly key: Key } }) => {
      const texts = items.filter((item): item is TextDropItem => item.kind === 'text')
      onDropped?.(await Promise.all(texts.map((item) => item.getText(photographDrag))), String(target.key))
    },
  }), [onDropped])
  return useDragAndDrop(options).dragAndDropHooks
}

/** The checks of the survey, station by station, with how many photographs each has; of them only what is in sight is drawn. */
export const CheckList = memo(({ label, groups, counts, onPick, onDropped, isWithNowhere, whenNone }: CheckListProps) => {
  const said = useWords().screens.contactSheet
  const dragAndDropHooks = useDropping(onDropped)
  return (
    <Virtualizer layout={ListLayout} layoutOptions={layoutOptions}>
      <ListBox
        aria-label={label} className={style.list ?? ''} selectionMode="none" onAction={(key) => onPick(String(key))} dragAndDropHooks={dragAndDropHooks}
        {...(whenNone && { renderEmptyState: () => <p className={style.none}>{whenNone()}</p> })}
      >
        {isWithNowhere && <CheckOption target={{ id: nowhere, place: undefined, title: said.noCheck, at: '', wantsPhotograph: false }} count={counts.get(nowhere) ?? 0} />}
        <Collection items={groups} dependencies={[counts]}>
          {({ id, name, targets }) => (
            <ListBoxSection id={id} aria-label={name}>
              <Header className={style.station ?? ''}>{name}</Header>
              <Collection items={targets} dependencies={[counts]}>{(target) => <CheckOption target={target} count={counts.get(target.id) ?? 0} />}</Collection>
            </ListBoxSection>
          )}
        </Collection>
      </ListBox>
    </Virtualizer>
  )
})
CheckList.displayName = 'CheckList'

const CheckOption = ({ target: { id, title, at, wantsPhotograph }, count }: { readonly target: CheckTarget; readonly count: number }) => {
  const { wantsOne, count: many, countOne } = useWords().screens.contactSheet
  const name = at === '' ? title : `${title}, ${at}`
  const has = count === 0 ? (wantsPhotograph ? wantsOne : '') : count === 1 ? countOne : say(many, { total: count }, 'metric')
  return (
    <ListBoxItem id={id} textValue={name} aria-label={has === '' ? name : `${name}, ${has}`} className={style.check ?? ''}>
      <span className={style.title}>{title}</span>
      {at !== '' && <span className={style.at}>{at}</span>}
      {count > 0 ? <span className={style.count}>{count}</span> : wantsPhotograph && <span className={style.wanted}>{wantsOne}</span>}
    </ListBoxItem>
  )
}
