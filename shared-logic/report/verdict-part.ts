import { summarize } from '../survey/assess'
import type { Tallies } from '../survey/tallies'
import type { Verdict } from '../survey/verdict'
import type { Words } from '../words/en'
import { say } from '../words/say'
import type { ReportContext } from './context'
import type { ReportDocument } from './document'

/** The overall verdict as a sentence: 'Fail', 'Pass of what was seen; 3 not seen'. A pass is never said of what was not seen. */
export const verdictSentence = (verdict: Verdict, tallies: Tallies, words: Words): string => {
  const { verdicts } = words.report
  const count = tallies['not seen']
  if (verdict === 'not seen') return verdicts.nothingSeen
  if (verdict === 'not applicable') return verdicts.nothingAsked
  if (count === 0) return words.verdicts[verdict]
  const template = verdict === 'pass' ? verdicts.passOfSeen : verdicts.withUnseen
  return template.replace('{count}', String(count)).replace('{verdict}', words.verdicts[verdict])
}

export const verdictPart = ({ assessed, words, units }: ReportContext): Pick<ReportDocument, 'verdict' | 'tallies'> => {
  const { verdict, tallies, asked } = summarize(assessed)
  const unseen = tallies['not seen']
  const inapplicable = tallies['not applicable']
  return {
    verdict: {
      verdict,
      word: words.verdicts[verdict],
      sentence: verdictSentence(verdict, tallies, words),
      detail: say(words.report.verdicts.detail, { asked, seen: asked - unseen - inapplicable, unseen, inapplicable }, units),
    },
    tallies,
  }
}
