import { formatQuantity } from '../../units/convert'
import { verdicts, type Verdict } from '../../survey/verdict'
import type { Shape } from '../drawing'
import { circle, label } from '../strokes'
import type { AreaCircles } from './area-scale'
import type { SpotPlanText } from './corrosion-plan'
import { verdictSample } from './verdict-shape'

interface Sample {
  readonly half: number
  readonly draw: (x: number, y: number) => readonly Shape[]
  readonly name: string
}

/** Width of text in this face, of its size: enough for placing a legend. */
const letterWidth = 0.54

const areaSamples = ({ roundM2, radiusOf }: AreaCircles, { units }: SpotPlanText, weight: number): Sample[] =>
  roundM2.map((areaM2) => ({ half: radiusOf(areaM2), name: formatQuantity('area', areaM2, units), draw: (x, y) => [circle(x, y, radiusOf(areaM2), { stroke: 'ink', weight })] }))

interface LegendGiven {
  readonly circles: AreaCircles | undefined
  readonly verdictsShown: ReadonlySet<Verdict>
  readonly unmeasuredRadius: number | undefined
  readonly text: SpotPlanText
  readonly size: number
}

const samplesOf = ({ circles, verdictsShown, unmeasuredRadius, text, size }: LegendGiven): Sample[] => [
  ...(circles ? areaSamples(circles, text, size * 0.1) : []),
  ...(unmeasuredRadius === undefined ? [] : [{ half: unmeasuredRadius, name: text.words.screens.corrosion.drawing.unmeasured, draw: (x: number, y: number) => [circle(x, y, unmeasuredRadius, { stroke: 'ink', weight: size * 0.1, dashed: true })] }]),
  ...verdicts.filter((verdict) => verdictsShown.has(verdict)).map((verdict) => ({ half: size * 0.6, name: text.words.verdicts[verdict], draw: (x: number, y: number) => verdictSample(verdict, x, y, size * 0.48) })),
]

const widthOf = ({ half, name }: Sample, size: number): number => half * 2 + size * 0.4 + name.length * size * letterWidth

const inRows = (samples: readonly Sample[], width: number, size: number): Sample[][] => {
  const rows: Sample[][] = []
  let left = 0
  for (const sample of samples) {
    const row = rows.at(-1)
    const long = widthOf(sample, size) + size
    if (row === undefined || long > left + size) {
      rows.push([sample])
      left = width - long
    } else {
      row.push(sample)
      left -= long
    }
  }
  return rows
}

/** The legend in rows across the width, from `top` down: round areas as circles, then what the outlines mean. */
export const spotLegend = (given: LegendGiven, left: number, top: number, width: number): { readonly shapes: readonly Shape[]; readonly foot: number } => {
  const { size } = given
  let foot = top
  const shapes = inRows(samplesOf(given), width - size * 0.4, size).flatMap((row) => {
    const height = Math.max(...row.map(({ half }) => half * 2), size * 1.2) + size * 0.5
    const y = foot + height / 2
    foot += height
    let x = left + size * 0.4
    return row.flatMap((sample) => {
      const { half, draw, name } = sample
      const drawn = [...draw(x + half, y), label(x + half * 2 + size * 0.4, y + size * 0.36, name, size)]
      x += widthOf(sample, size) + size
      return drawn
    })
  })
  return { shapes, foot }
}
