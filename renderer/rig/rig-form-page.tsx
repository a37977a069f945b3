import { useQueryOf } from '../client/use-procedure'
import { LoadProblem, isGone } from '../parts/load-problem'
import { Page } from '../parts/page'
import { Waiting } from '../parts/progress'
import { useWords } from '../parts/use-words'
import { RigForm } from './rig-form'

interface RigFormPageProps {
  /** Absent when a rig is registered. */
  readonly rigId?: string
}

const EditRig = ({ rigId }: { readonly rigId: string }) => {
  const { rig: words, shell } = useWords().screens
  const row = useQueryOf('rigs.get', { rigId })
  if (row.data) return <RigForm key={rigId} rigId={rigId} kept={row.data.rig} />
  return (
    <Page title={row.error ? (isGone(row.error) ? words.gone : words.notOpened) : shell.programName} isTitleHidden={!row.error}>
      {row.error ? <LoadProblem error={row.error} onRetry={() => { void row.refetch() }} /> : <Waiting />}
    </Page>
  )
}

/** Registering a rig, or describing one better. */
export const RigFormPage = ({ rigId }: RigFormPageProps) => (rigId === undefined ? <RigForm /> : <EditRig rigId={rigId} />)
