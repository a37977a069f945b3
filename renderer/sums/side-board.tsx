import { memo, useMemo, useState } from 'react'
import { withAxleAt, withStemAt } from '../../shared-logic/balance/moved-rig'
import { sideSpanOf } from '../../shared-logic/drawings/side/layout'
import { sideView, type SideView } from '../../shared-logic/drawings/side-view'
import type { Rig } from '../../shared-logic/rig/rig'
import type { Sums } from '../../shared-logic/sums/sums'
import { measured, type UnitSystem } from '../../shared-logic/units/quantity'
import type { Words } from '../../shared-logic/words/en'
import { say } from '../../shared-logic/words/say'
import { DrawingShapes } from '../drawing/drawing-shapes'
import drawingStyle from '../drawing/drawing.module.css'
import { useUnits } from '../parts/use-settings'
import { useWords } from '../parts/use-words'
import { MoveHandle } from './move-handle'
import style from './side-board.module.css'
import { shownShare } from './shown-share'
import { useIsNarrow } from './use-is-narrow'
import type { SumsRig } from './use-sums-rig'

const saidOf = (words: Words, { balance: { lever } }: Sums, units: UnitSystem): string => {
  const { drawingSaid, drawingUnknown } = words.screens.sums
  if (!lever) return drawingUnknown
  return say(drawingSaid, { coupling: measured('mass', lever.couplingKg), share: shownShare(lever.share), total: measured('mass', lever.totalKg), axles: measured('mass', lever.axleKg) }, units)
}

const Picture = memo(({ drawing, title }: { readonly drawing: SideView; readonly title: string }) => (
  <svg viewBox={drawing.viewBox.join(' ')} role="img" aria-label={title} className={drawingStyle['drawing']}><DrawingShapes shapes={drawing.shapes} /></svg>
))
Picture.displayName = 'Picture'

interface SideBoardProps {
  readonly sheet: SumsRig
  readonly sums: Sums
}

interface Handle {
  readonly id: 'boat' | 'axle'
  readonly atM: number | undefined
  readonly moved: (rig: Rig, aftM: number) => Rig
  readonly minM: number
}

const handlesOf = ({ trailer, boat, loading, stance }: Rig): Handle[] => [
  ...(boat ? [{ id: 'boat' as const, atM: loading?.stemAftOfBallM, moved: withStemAt, minM: 0 }] : []),
  { id: 'axle', atM: trailer.ballToAxleM, moved: withAxleAt, minM: 0.5 + (((trailer.axleCount ?? 1) - 1) / 2) * (stance?.axleSpacingM ?? 0) },
]

/** The rig from the side; boat and axle are dragged in it, and the sums follow at once. */
export const SideBoard = ({ sheet, sums }: SideBoardProps) => {
  const words = useWords()
  const units = useUnits()
  const isSmall = useIsNarrow()
  const [held, setHeld] = useState(() => sideSpanOf(sheet.rig))
  // The scale stands still while something is dragged, and follows when it is let go.
  const own = sideSpanOf(sheet.rig)
  if (!sheet.isDragging && (own.firstM !== held.firstM || own.lastM !== held.lastM)) setHeld(own)
  const drawing = useMemo(() => sideView(sheet.rig, sums, words, units, { isSmall, span: held }), [sheet.rig, sums, words, units, isSmall, held])
  const { viewBox: [, , width, height], xOf } = drawing
  const said = words.screens.sums
  const handles = handlesOf(sheet.rig).filter(({ atM, minM }) => atM !== undefined && atM >= minM && atM <= held.lastM)
  return (
    <figure className={style.board}>
      <div className={style.sheet} style={{ aspectRatio: `${width} / ${height}` }}>
        <Picture drawing={drawing} title={say(said.drawing, { said: saidOf(words, sums, units) }, units)} />
        {handles.map(({ id, atM = 0, minM, moved }) => {
          const place = drawing.places.find((each) => each.id === id)
          return (
            <MoveHandle
              key={id} label={said.handles[id]} valueM={atM} minM={minM} maxM={held.lastM} left={xOf(minM) / width} right={xOf(held.lastM) / width} top={(place?.y ?? 0) / height}
              moved={moved} kept={sheet.fields.kept} onMove={sheet.preview} onEnd={sheet.fields.put}
            />
          )
        })}
      </div>
      <figcaption className={style.caption}>{handles.length > 0 ? said.drag : said.handleWaits}</figcaption>
    </figure>
  )
}
