import { gradeFile, gradeFileSchema, type GradeFile } from '../../shared-logic/corrosion/grade-file'
import { en } from '../../shared-logic/words/en'
import { sayGrade } from '../../shared-logic/words/corrosion/grade'
import { sayLife } from '../../shared-logic/words/corrosion/life'
import type { CorrosionSection } from '../../shared-logic/words/corrosion/section'
import { sayTrail } from '../../shared-logic/words/corrosion/trail'
import { say } from '../../shared-logic/words/say'
import type { Answer, Command } from './command'
import { withWrittenFile } from './read-written-file'

const sectionLines = ({ title, lines, sources, cautions }: CorrosionSection): string[] => [
  title,
  ...lines.map(({ text, verdict }) => `  ${verdict === undefined ? '' : `${en.verdicts[verdict]}: `}${text}`),
  ...cautions.map((caution) => `  ${caution}`),
  ...sources.map((source) => `  ${say(en.sums.source, { source }, 'metric')}`),
]

const answer = (file: GradeFile): Answer => {
  const { gradings, trails } = gradeFile(file)
  const sections = [
    ...gradings.map((grading) => sayGrade(en, grading, file.units)),
    ...trails.flatMap((trail) => [
      ...(trail.points.length > 1 ? [sayTrail(en, trail, file.units)] : []),
      ...(trail.life.kind === 'no zinc to read' ? [] : [sayLife(en, trail.life, file.units)]),
    ]),
  ]
  return {
    lines: sections.flatMap((section, index) => [...(index > 0 ? [''] : []), ...sectionLines(section)]),
    json: { surveyDate: file.surveyDate, gradings, trails, words: sections },
  }
}

/** `grade spot.json` */
export const grade: Command = { words: [1, 1], options: [], run: (given) => withWrittenFile(given.words[0] ?? '', given, { schema: gradeFileSchema, kind: 'grade' }, answer) }
