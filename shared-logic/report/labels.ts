import { z } from 'zod'

/** Every heading and label a report prints; the words stand in `words/en/report` and travel inside the report. */
export const reportLabelKeys = [
  'report', 'number', 'page', 'of', 'verdict', 'threeThings', 'furtherFails', 'furtherFailsMore', 'noThings', 'noneSeen', 'plan', 'rig', 'remarks',
  'findings', 'noFindings', 'finding', 'found', 'recorded', 'criterion', 'source', 'sources', 'consequence', 'remedy', 'by', 'byWhenKey', 'note', 'instrument', 'judged', 'overruled', 'reason',
  'stations', 'station', 'whole', 'check', 'place', 'notSeen', 'nothingUnseen', 'photographs', 'photograph', 'otherPhotographs', 'register', 'noPhotographs', 'fileName',
  'fromTheCamera', 'fingerprint', 'missingPicture', 'missingPictures', 'shows', 'ofNoCheck', 'cautions', 'method', 'rulesUsed', 'signature', 'signed', 'nameAndAddress', 'signedOn', 'data', 'continued',
] as const

export const reportLabelsSchema = z.record(z.enum(reportLabelKeys), z.string())
