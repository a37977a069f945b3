import { useState } from 'react'
import { photographAddress } from '../../shared-logic/contract/contract'
import type { MarkLayer } from '../../shared-logic/marking/marks'
import { turnedSize } from '../../shared-logic/marking/turned'
import type { Photograph } from '../../shared-logic/survey/records'
import { Button } from '../parts/button'
import { ConfirmDialog } from '../parts/dialog'
import { LeaveGuard } from '../parts/leave-guard'
import { RefusalNotice } from '../parts/refusal-notice'
import { Sheet } from '../parts/sheet'
import { useWords } from '../parts/use-words'
import bench from '../picture-board/bench.module.css'
import { begun, type History } from '../picture-board/history'
import { MarkingBench } from './marking-bench'
import { knownProblem, sketchOf, uprightLayerOf, type Sketch } from './sketch'

interface MarkingBoardProps {
  readonly photograph: Photograph
  /** Settles once the layer is kept; rejects when it was not, and the board stays open with the reason. */
  readonly onKeep: (layer: MarkLayer) => Promise<void>
  readonly onClose: () => void
}

/** A photograph marked up: a layer over the untouched original, kept whole in one go. */
export const MarkingBoard = ({ photograph, onKeep, onClose }: MarkingBoardProps) => {
  const said = useWords().screens.marking
  const { sha256, quarterTurns, marks, widthPx, heightPx } = photograph
  const [size] = useState(() => turnedSize({ widthPx, heightPx }, quarterTurns))
  const [history, setHistory] = useState<History<Sketch>>(() => begun(sketchOf(marks, quarterTurns)))
  const [isLeaving, setLeaving] = useState(false)
  const [isKeeping, setKeeping] = useState(false)
  const [problem, setProblem] = useState<unknown>()
  const hasChanged = history.past.length > 0
  const waits = knownProblem(history.now, size)
  const leave = (): void => {
    if (hasChanged) setLeaving(true)
    else onClose()
  }
  const keep = async (): Promise<void> => {
    setKeeping(true)
    setProblem(undefined)
    try {
      await onKeep(uprightLayerOf(history.now, size, quarterTurns))
      onClose()
    } catch (reason) {
      setProblem(reason)
      setKeeping(false)
    }
  }
  return (
    <Sheet
      title={said.title} isWhole onClose={leave}
      actions={
        <>
          <p className={bench.foot}>{waits === undefined ? '' : waits === 'length' ? said.known.waits : said.known.unfit}</p>
          <Button onPress={leave}>{said.cancel}</Button>
          <Button kind="primary" isDisabled={waits !== undefined || !hasChanged} isPending={isKeeping} onPress={() => void keep()}>{said.keep}</Button>
        </>
      }
    >
      <RefusalNotice error={problem} />
      <MarkingBench picture={{ src: photographAddress(sha256, 'large'), size, quarterTurns }} history={history} onHistory={setHistory} />
      <LeaveGuard isHeld={hasChanged} />
      <ConfirmDialog title={said.discardTitle} isOpen={isLeaving} confirmLabel={said.discard} cancelLabel={said.stay} onConfirm={onClose} onCancel={() => setLeaving(false)}>
        <p>{said.discardText}</p>
      </ConfirmDialog>
    </Sheet>
  )
}
