import { z } from 'zod'
import { breakCodes } from './chain'
import { recordEndSchema } from './entry'

/** What is not as it was recorded; the sentences stand in `words/en/proof` under the same names. */
export const problemCodes = [
  // The record itself, and the yard's list of surveys.
  'record-missing', 'record-of-another-survey', ...breakCodes, 'record-shorter-than-report', 'record-other-than-report', 'record-shorter-than-list', 'record-other-than-list',
  'list-missing', 'list-altered', 'list-end-missing', 'list-cut-off',
  // Surveys against that list.
  'survey-gone', 'survey-gone-with-record', 'survey-unknown', 'survey-unlisted', 'survey-put-away', 'survey-brought-back',
  // The yard's rows against the record.
  'photograph-unrecorded', 'photograph-gone', 'photograph-other', 'photograph-changed', 'order-changed', 'original-without-photograph', 'survey-changed',
  // The same where the record itself was altered, so that either may be wrong.
  'photograph-not-in-record', 'photograph-only-in-record', 'photograph-other-in-record', 'photograph-differs', 'order-differs', 'survey-differs', 'report-not-in-record', 'report-only-in-record', 'report-differs',
  // Files on the disk against the record.
  'file-missing', 'file-set-aside', 'file-resized', 'file-changed', 'file-unreadable', 'file-added',
  // The copies that are shown and printed.
  'copy-missing', 'copy-changed', 'copy-unreadable',
  // Issued reports.
  'report-unrecorded', 'report-gone', 'report-row-changed', 'report-missing', 'report-changed', 'report-unreadable', 'report-added', 'report-tells-otherwise',
] as const
export type ProblemCode = (typeof problemCodes)[number]

export const problemSchema = z.object({
  code: z.enum(problemCodes),
  /** Fills the gaps of the sentence. */
  values: z.record(z.string(), z.union([z.string(), z.number()])),
})
export type Problem = z.infer<typeof problemSchema>

/** What came of verifying one survey's photographs. All is as recorded where there are no problems. */
export const verifiedSchema = z.object({
  /** Photographs that stand in the survey, and those that were removed from it; both are kept. */
  photographCount: z.int().nonnegative(),
  removedCount: z.int().nonnegative(),
  /** Entered after they had come in, and when: before that nothing is proven of them. */
  late: z.object({ count: z.int().positive(), at: z.string() }).optional(),
  /** The same of reports, after they were issued. */
  lateReports: z.object({ count: z.int().positive(), at: z.string() }).optional(),
  /** Photographs of whose copies for screen and report nothing is recorded yet; these are made anew before they are used. */
  withoutCopies: z.int().positive().optional(),
  /** Stands where earlier states of the yard's file are kept. */
  hasBackups: z.literal(true).optional(),
  /** Absent where neither a photograph ever came in nor a report was issued. */
  end: recordEndSchema.optional(),
  byteCount: z.int().nonnegative(),
  /** Where the record stood when each report was issued, as the report prints it. Newest first. */
  reports: z.array(z.object({ number: z.string(), revision: z.int(), end: recordEndSchema.optional() })),
  problems: z.array(problemSchema),
})
export type Verified = z.infer<typeof verifiedSchema>
