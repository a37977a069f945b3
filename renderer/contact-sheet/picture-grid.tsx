import { memo, useEffect, useMemo, useRef, type KeyboardEvent, type ReactNode } from 'react'
import { DropIndicator, GridList, useDragAndDrop, Virtualizer, type DropTarget, type Key, type Selection } from 'react-aria-components'
import { say } from '../../shared-logic/words/say'
import { useWords } from '../parts/use-words'
import type { SheetSort } from './arrange'
import { mayStandBeside } from './moves'
import { PictureCell } from './picture-cell'
import style from './picture-grid.module.css'
import { layoutOptions, SheetLayout } from './sheet-layout'
import type { SheetPhotograph } from './sheet-photograph'

/** One thing dragged: what it is to each kind of place it may be let go at. */
type Dragged = Record<string, string>

/** What a dragged photograph is called among the types of a drag; what it carries is its id. */
export const photographDrag = 'bunkwright-photograph'

interface PictureGridProps {
  readonly shown: readonly SheetPhotograph[]
  readonly sort: SheetSort
  readonly surveyDate: string
  /** By id, their numbers in the report that is issued. */
  readonly numbers: ReadonlyMap<string, number>
  readonly isFrozen: boolean
  readonly chosen: ReadonlySet<string>
  readonly onChoose: (chosen: ReadonlySet<string>) => void
  readonly writing: string | undefined
  readonly onWrite: (id: string) => void
  readonly onWritten: (id: string, caption: string | undefined) => void
  readonly onOpen: (id: string) => void
  readonly onPut: (ids: ReadonlySet<string>, target: string, side: 'before' | 'after') => void
  /** A key struck on a photograph; answers whether it meant something. */
  readonly onKey: (event: KeyboardEvent, id: string) => boolean
  readonly whenNone: () => ReactNode
}

/** Before a cell, the library brings its list into the middle of the window; with a list as long as the page that would be a leap. */
const withoutLeap = (list: HTMLDivElement | null): void => {
  if (list !== null) list.scrollIntoView = () => undefined
}

const leaps: ReadonlySet<string> = new Set(['PageUp', 'PageDown', 'Home', 'End'])

const textsOf = (keys: Iterable<Key>): Set<string> => new Set([...keys].map(String))

/** The photographs put in order by hand, where the order is one that can be changed by hand. */
const useOrdering = ({ shown, sort, isFrozen, onPut }: PictureGridProps) => {
  const said = useWords().screens.contactSheet
  const now = useRef({ shown, sort, onPut })
  useEffect(() => {
    now.current = { shown, sort, onPut }
  })
  const moved = useRef<readonly SheetPhotograph[]>([])
  // The library builds its hooks anew, and with them every cell, whenever it is handed other options.
  const options = useMemo(() => ({
    isDisabled: isFrozen,
    getItems: (keys: Set<Key>): Dragged[] => [...keys].map((key) => ({ [photographDrag]: String(key), 'text/plain': now.current.shown.find(({ id }) => id === key)?.name ?? '' })),
    getAllowedDropOperations: () => ['move' as const],
    acceptedDragTypes: [photographDrag],
    onDragStart: ({ keys }: { keys: Set<Key> }) => { moved.current = now.current.shown.filter(({ id }) => keys.has(id)) },
    getDropOperation: (target: DropTarget) => {
      const beside = target.type === 'item' && target.dropPosition !== 'on' ? now.current.shown.find(({ id }) => id === target.key) : undefined
      return beside !== undefined && mayStandBeside(moved.current, beside, now.current.sort) ? ('move' as const) : ('cancel' as const)
    },
    onReorder: ({ keys, target }: { keys: Set<Key>; target: { key: Key; dropPosition: 'before' | 'after' | 'on' } }) => {
      if (target.dropPosition !== 'on') now.current.onPut(textsOf(keys), String(target.key), target.dropPosition)
    },
    renderDragPreview: (items: Dragged[]) => <div className={style.preview}>{items.length === 1 ? items[0]?.['text/plain'] : say(said.dragging, { count: items.length }, 'metric')}</div>,
    renderDropIndicator: (target: DropTarget) => <DropIndicator target={target} className={style.indicator ?? ''} />,
  }), [isFrozen, said])
  return useDragAndDrop<SheetPhotograph>(options).dragAndDropHooks
}

/** The photographs as a grid of which only what is in sight is drawn. Chosen by press, Space, Shift and arrows; dragged by hand or by keyboard. */
export const PictureGrid = memo((props: PictureGridProps) => {
  const { shown, surveyDate, numbers, isFrozen, chosen, onChoose, writing, onWrite, onWritten, onOpen, onKey, whenNone } = props
  const said = useWords().screens.contactSheet
  const dragAndDropHooks = useOrdering(props)
  const choose = (selection: Selection): void => onChoose(selection === 'all' ? new Set(shown.map(({ id }) => id)) : textsOf(selection))
  const key = (event: KeyboardEvent): void => {
    const row = event.target instanceof HTMLElement && event.target.role === 'row' ? event.target.dataset['key'] : undefined
    if (row === undefined) return
    // The focus takes the page along; the browser's own leap would be added to that.
    if (leaps.has(event.key)) event.preventDefault()
    if (!onKey(event, row)) return
    event.preventDefault()
    event.stopPropagation()
  }
  return (
    // oxlint-disable-next-line jsx-a11y/no-static-element-interactions -- keys struck on the cells within, before the list takes them
    <div onKeyDownCapture={key} className={style.around}>
      <Virtualizer layout={SheetLayout} layoutOptions={layoutOptions}>
        <GridList
          ref={withoutLeap} aria-label={said.grid} layout="grid" className={style.grid ?? ''} items={shown} dependencies={[writing, isFrozen, surveyDate, numbers]} disallowTypeAhead
          selectionMode={isFrozen ? 'none' : 'multiple'} selectedKeys={chosen} onSelectionChange={choose} {...(isFrozen ? { onAction: (id: Key) => onOpen(String(id)) } : { dragAndDropHooks })}
          renderEmptyState={whenNone}
        >
          {(each) => <PictureCell each={each} number={numbers.get(each.id)} surveyDate={surveyDate} isFrozen={isFrozen} isWriting={writing === each.id} onOpen={onOpen} onWrite={onWrite} onWritten={onWritten} />}
        </GridList>
      </Virtualizer>
    </div>
  )
})
PictureGrid.displayName = 'PictureGrid'
