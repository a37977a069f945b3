import type { Facts, ReportFacts, SurveyFacts } from '../../proof/entry'
import type { ProblemCode } from '../../proof/problem'

/** What verifying a survey's photographs says, on the command line, in the window and in the report. */
export const proofWords = {
  allRight: { none: 'No photograph has come into this survey.', one: 'One photograph, as it came in.', many: '{count} photographs, all as they came in.' },
  removed: { one: 'One more was removed from the survey; it is kept and looked at too.', many: '{count} more were removed from the survey; they are kept and looked at too.' },
  wrong: { one: 'One thing is not as it was recorded.', many: '{count} things are not as they were recorded.' },
  late: {
    one: 'One was entered on {date}, after it had come in: nothing is proven of it before that day.',
    many: '{count} were entered on {date}, after they had come in: nothing is proven of them before that day.',
  },
  lateReports: {
    one: 'One report was entered on {date}, after it was issued: nothing is proven of it before that day.',
    many: '{count} reports were entered on {date}, after they were issued: nothing is proven of them before that day.',
  },
  withoutCopies: {
    one: 'Of one photograph the copies for screen and report were never recorded: they are made anew from the original before they are used.',
    many: 'Of {count} photographs the copies for screen and report were never recorded: they are made anew from the originals before they are used.',
  },
  end: 'The record has {count} entries; SHA-256 of the last: {sha256}',
  reportEnd: 'Report {number}, revision {revision}, prints {count} entries; SHA-256 of the last: {sha256}',
  reportBefore: 'Report {number}, revision {revision}, prints no record of photographs.',
  /** What such a record proves, and what it does not. */
  meaning: 'Each entry carries the hash of the one before it, so a single change, a gap or an exchange is found. Someone who writes the whole record anew is found only by a last hash kept elsewhere: hold what is said here of a report to the printed report.',
  problems: {
    'record-missing': 'The record is gone. Photographs in this survey: {count}; reports: {reports}.',
    'record-of-another-survey': 'The record is that of another survey.',
    'record-end-missing': 'Where the record ends is not kept any more: entries may have been cut off.',
    'record-cut-off': 'The record has {kept} entries and should have {count}: its end was cut off.',
    'record-runs-on': 'The record does not end as it should, with entry {count}: the end was changed, or entries were put on.',
    'entry-missing': 'Entry {place} of the record was taken out.',
    'entry-twice': 'Entry {place} of the record is there twice.',
    'entry-changed': 'Entry {place} of the record was changed.',
    'entry-unreadable': 'Entry {place} of the record cannot be read.',
    'entry-out-of-turn': 'Entry {place} of the record does not follow from the one before: something there was changed, put in, taken out or exchanged.',
    'entry-impossible': 'Entry {place} of the record tells of what cannot be.',
    'photograph-unrecorded': '“{name}” was added: it is in the survey and was never recorded.',
    'photograph-gone': '“{name}” is missing: it was recorded, and the survey does not have it any more.',
    'photograph-other': '“{name}” was exchanged: the survey now names another picture.',
    'photograph-changed': '“{name}” was changed: {fact} was recorded as {recorded} and now reads {now}.',
    'order-changed': 'The order of the photographs was changed: it is not the one recorded.',
    'original-without-photograph': 'An original was added to the yard’s list that belongs to no photograph: {sha256}.',
    'survey-changed': 'After report {number}, revision {revision}, was issued, {surveyFact} changed without the survey being opened again.',
    'file-missing': '“{name}”: the original is missing.',
    'file-set-aside': '“{name}”: the original is missing from its place; it lies among those set aside in photographs/unrecorded.',
    'file-resized': '“{name}”: the original was changed. It has {now} bytes and was recorded with {recorded}.',
    'file-changed': '“{name}”: the original was changed. It has as many bytes as were recorded, but not the same.',
    'file-unreadable': '“{name}”: the original cannot be read ({reason}).',
    'file-added': '{file} was added: it belongs to no photograph.',
    'copy-missing': '“{name}”: {copy} is missing. {original}',
    'copy-changed': '“{name}”: {copy} was changed. {original}',
    'copy-unreadable': '“{name}”: {copy} cannot be read ({reason}). {original}',
    'report-unrecorded': 'Report {number}, revision {revision}, was added: it is in the survey and was never recorded.',
    'report-gone': 'Report {number}, revision {revision}, is missing: it was recorded, and the survey does not have it any more.',
    'report-row-changed': 'Report {number}, revision {revision}, was changed: {reportFact} was recorded as {recorded} and now reads {now}.',
    'report-missing': 'The PDF of report {number}, revision {revision}, is missing.',
    'report-changed': 'The PDF of report {number}, revision {revision}, was changed.',
    'report-unreadable': 'What report {number}, revision {revision}, says of the record was changed and cannot be read.',
    'report-added': '{file} was added: it is no report of this yard.',
    'report-tells-otherwise': 'Report {number}, revision {revision}, prints that entry {count} has SHA-256 {sha256}. The record says otherwise: the one or the other was written anew.',
  } satisfies Record<ProblemCode, string>,
  facts: {
    byteCount: 'its size', format: 'its format', widthPx: 'its width', heightPx: 'its height', takenAt: 'its time from the camera', latitude: 'its latitude', longitude: 'its longitude',
    qualitySha256: 'what was measured of it', lookHash: 'its likeness', firstArrivedAt: 'when the yard first had it', arrivedAt: 'its arrival', source: 'how it came', fileName: 'its file name',
    largePreviewSha256: 'the hash of its large copy', smallPreviewSha256: 'the hash of its small copy', checkId: 'its check', position: 'its place', caption: 'its caption', quarterTurns: 'its turn', isPrinted: 'whether it prints', marksSha256: 'its marks', removedAt: 'its removal',
  } satisfies Record<keyof Facts | 'byteCount', string>,
  reportFacts: {
    number: 'its number', revision: 'its revision', issuedAt: 'when it was issued', date: 'its date', verdict: 'its verdict', documentSha256: 'the hash of what it says', pdfSha256: 'the hash of its PDF', pdfByteCount: 'the size of its PDF',
  } satisfies Record<keyof ReportFacts, string>,
  surveyFacts: {
    headSha256: 'what heads the survey (date, place, purpose, verdict or state)', rigSha256: 'the rig as it was that day', answersSha256: 'what was answered',
  } satisfies Record<keyof SurveyFacts, string>,
  copies: { large: 'the large copy, which is shown and printed,', small: 'the small copy, which stands in lists,' },
  /** Of the original, beside a copy that is not as it was recorded. */
  originals: {
    whole: 'The original is as it came in, and the copy is made again from it before it is used.',
    harmed: 'The original is not as it came in either, so no other copy can be made.',
  },
  yes: 'yes',
  no: 'no',
  /** In the window. */
  panel: {
    title: 'Proof of the photographs',
    explain: 'Reads every photograph of this survey, the copies that are shown and printed, and every issued report, and holds them to what was recorded.',
    verify: 'Verify photographs',
    again: 'Verify again',
    verifying: 'Reading {count} photographs, {size} in all.',
    verifyingOne: 'Reading one photograph, {size}.',
    stop: 'Stop',
    details: 'What this proves',
  },
}
