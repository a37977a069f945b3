/** Outside of a closed rectangular section and its wall, m. `heightM` is the direction it bends in. */
export interface BoxSection {
  readonly widthM: number
  readonly heightM: number
  readonly wallM: number
}

const areaOf = ({ widthM, heightM, wallM }: BoxSection): number => widthM * heightM - Math.max(0, widthM - 2 * wallM) * Math.max(0, heightM - 2 * wallM)

const modulusOf = ({ widthM, heightM, wallM }: BoxSection): number => {
  const inner = Math.max(0, widthM - 2 * wallM) * Math.max(0, heightM - 2 * wallM) ** 3
  return (widthM * heightM ** 3 - inner) / (6 * heightM)
}

/** Lost shares of a section, 0 to 1. */
export interface SectionLoss {
  readonly area: number
  readonly modulus: number
}

/** What an even loss of metal takes of a box section: `outsideM` off its outside all round, `insideM` off its inside. Plain geometry, square corners. */
export const boxSectionLoss = (whole: BoxSection, outsideM: number, insideM: number): SectionLoss => {
  const left: BoxSection = { widthM: Math.max(0, whole.widthM - 2 * outsideM), heightM: Math.max(0, whole.heightM - 2 * outsideM), wallM: Math.max(0, whole.wallM - outsideM - insideM) }
  const isGone = left.wallM === 0 || left.heightM === 0
  return { area: 1 - areaOf(left) / areaOf(whole), modulus: isGone ? 1 : 1 - modulusOf(left) / modulusOf(whole) }
}
