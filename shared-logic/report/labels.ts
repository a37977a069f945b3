import { z } from 'zod'

/** Every heading and label a report prints; the words stand in `words/en/report` and travel inside the report. */
export const reportLabelKeys = [
  'report', 'number', 'revision', 'page', 'of', 'verdict', 'tallies', 'threeThings', 'noThings', 'noneSeen', 'plan', 'noPlan', 'rig', 'remarks',
  'findings', 'noFindings', 'finding', 'found', 'recorded', 'criterion', 'source', 'sources', 'consequence', 'remedy', 'by', 'note', 'instrument', 'judged', 'overruled', 'reason',
  'stations', 'station', 'whole', 'checks', 'check', 'place', 'notSeen', 'nothingUnseen', 'photographs', 'photograph', 'otherPhotographs', 'register', 'noPhotographs', 'caption', 'fileName',
  'fromTheCamera', 'fingerprint', 'missingPicture', 'shows', 'cautions', 'method', 'rulesUsed', 'signature', 'signed', 'nameAndAddress', 'signedOn', 'seeFinding', 'data', 'continued', 'judgedBy', 'about',
] as const

export const reportLabelsSchema = z.record(z.enum(reportLabelKeys), z.string())
export type ReportLabels = z.infer<typeof reportLabelsSchema>
