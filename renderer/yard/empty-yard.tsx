import type { Rig } from '../../shared-logic/rig/rig'
import { useMutationOf } from '../client/use-procedure'
import { RigThumbnail } from '../drawing/rig-thumbnail'
import { Button } from '../parts/button'
import { EmptyState } from '../parts/empty-state'
import { LinkButton } from '../parts/link-button'
import { RefusalNotice } from '../parts/refusal-notice'
import { useWords } from '../parts/use-words'
import style from './yard-page.module.css'

/** Drawn below the words: a tandem with a boat on it, of no one in particular. */
const sketched: Rig = { name: '…', trailer: { axleCount: 2, supports: 'bunks', lengthM: 7.2, widthM: 2.4, ballToAxleM: 4.6 }, boat: { lengthM: 6.2, beamM: 2.3, engine: 'outboard' } }

/** A yard without rigs: what it is for, and two ways to begin. */
export const EmptyYard = () => {
  const { yard } = useWords().screens
  const example = useMutationOf('yard.openExample')
  return (
    <div className={style.empty}>
      <EmptyState
        title={yard.emptyTitle}
        actions={
          <>
            <LinkButton to="/rigs/new" kind="primary">{yard.register}</LinkButton>
            <Button onPress={() => example.mutate({})} isPending={example.isPending}>{example.isPending ? yard.openingExample : yard.openExample}</Button>
          </>
        }
      >
        <p>{yard.emptyText}</p>
        <p>{yard.emptyExample}</p>
        <RefusalNotice error={example.error} />
      </EmptyState>
      <div className={style.emptyDrawing}><RigThumbnail rig={sketched} ruleBook="us" /></div>
    </div>
  )
}
