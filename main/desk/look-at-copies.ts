import type { PreviewHashes } from '../../shared-logic/photographs/preview-hashes'
import type { RecordedPhotograph } from '../../shared-logic/proof/acts'
import type { Problem } from '../../shared-logic/proof/problem'
import type { FileFound, LookOptions } from '../photos/file-hash'
import { copiesMadeAnew } from '../photos/made-anew'
import { lookAtPreview, type OriginalFound } from '../photos/shelf-files'

/** What was found of copies already, where several surveys are looked through together. */
export type KnownCopies = Map<string, FileFound>

const problemOfCopy = (found: FileFound, values: Problem['values']): Problem[] => {
  switch (found.is) {
    case 'as recorded': return []
    case 'missing': return [{ code: 'copy-missing', values }]
    case 'unreadable': return [{ code: 'copy-unreadable', values: { ...values, reason: found.reason } }]
    case 'resized':
    case 'changed': return [{ code: 'copy-changed', values }]
  }
}

const sizes = ['large', 'small'] as const

/** The hashes recorded of a photograph's copies; undefined where none were. */
const recordedCopies = ({ facts: { largePreviewSha256: large, smallPreviewSha256: small } }: RecordedPhotograph): PreviewHashes | undefined =>
  typeof large === 'string' && typeof small === 'string' ? { large, small } : undefined

export const hasNoCopyRecorded = (photograph: RecordedPhotograph): boolean => recordedCopies(photograph) === undefined

/**
 * Holds both copies made from an original to what is recorded of them. Before one is said to be changed both are made anew:
 * a copy that is what this program makes of the original is right, and only not entered yet, as after a crash between.
 * Their bytes count into no progress: they are few beside the original's.
 */
export const lookAtCopies = async (shelfFolder: string, photograph: RecordedPhotograph, original: OriginalFound, known: KnownCopies, { signal }: LookOptions): Promise<Problem[]> => {
  const recorded = recordedCopies(photograph)
  if (recorded === undefined) return []
  const { sha256, facts } = photograph
  const isWhole = original.is === 'as recorded'
  const problems: Problem[] = []
  let anew: PreviewHashes | undefined
  for (const size of sizes) {
    const key = `${size} ${sha256} ${recorded[size]}`
    let found = known.get(key) ?? (await lookAtPreview(shelfFolder, sha256, size, recorded[size], { signal }))
    if (found.is === 'changed' && isWhole) {
      anew ??= await copiesMadeAnew(shelfFolder, { sha256, format: facts.format })
      if (found.sha256 === anew?.[size]) found = { is: 'as recorded' }
    }
    known.set(key, found)
    problems.push(...problemOfCopy(found, { name: facts.fileName ?? '', sha256, copy: size, original: isWhole ? 'whole' : 'harmed' }))
  }
  return problems
}
