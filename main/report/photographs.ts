import type { PhotographLine, ReportDocument } from '../../shared-logic/report/document'
import type { Line } from './lines'
import type { Frame } from './drawing'
import type { Column, Sheet } from './page'
import { drawMarkedPicture, turnedPicture } from './marks'
import type { Picture, Pictures } from './pictures'
import { hairline, mat } from './colours'
import { styles } from './styles'
import { Table } from './tables'

const gutter = 16
/** Never blown up beyond what 120 dots an inch carry. */
const leastDotsPerPoint = 120 / 72
/** A picture of 4 : 3, as cameras take them, fills its column; this is as tall as any may be. */
const columnShape = 3 / 4
/** The least height it may be shrunk to so that it still stands on the page of its finding. */
const least = 124
/** What a finding asks for below its text, so that its first photographs stand on the same page. */
export const photographRoom = least + 40
const missingHeight = 96
const captionGap = 4

/** A photograph set into its column, `column` wide from `x` on. The picture itself is `width` by `height`. */
interface SetPhotograph {
  readonly photograph: PhotographLine
  readonly picture: Picture | undefined
  readonly x: number
  readonly column: number
  readonly width: number
  readonly height: number
  readonly caption: readonly Line[]
  /** What is known of it, small beneath the caption. */
  readonly facts: readonly Line[]
}

const fit = (photograph: PhotographLine, picture: Picture | undefined, width: number, height: number): { width: number; height: number } => {
  if (picture === undefined) return { width, height: missingHeight }
  const { widthPx, heightPx } = turnedPicture(picture, photograph)
  const scale = Math.min(width / widthPx, height / heightPx, 1 / leastDotsPerPoint)
  return { width: widthPx * scale, height: heightPx * scale }
}

const captionOf = ({ number, shows }: PhotographLine, labels: ReportDocument['labels']): string => `${labels.photograph} ${number}${shows === '' ? '' : `. ${shows}`}`

const factsOf = ({ fromTheCamera, byOwnClock, lengthsHold }: PhotographLine, labels: ReportDocument['labels']): string[] =>
  [fromTheCamera === undefined ? byOwnClock : `${labels.fromTheCamera}: ${fromTheCamera}`, lengthsHold].filter((fact) => fact !== undefined)

const setPhotograph = (sheet: Sheet, photograph: PhotographLine, pictures: Pictures, labels: ReportDocument['labels'], x: number, column: number, height: number): SetPhotograph => {
  const picture = pictures.get(photograph.sha256)
  const facts = factsOf(photograph, labels).flatMap((fact) => sheet.setter.lines(fact, styles.label, column))
  const captions = [captionOf(photograph, labels), ...(photograph.original ? [photograph.original.sentence] : [])]
  return { photograph, picture, x, column, ...fit(photograph, picture, column, height), caption: captions.flatMap((text) => sheet.setter.lines(text, styles.small, column)), facts }
}

/** A white picture has an edge on white paper too. */
export const frame = (sheet: Sheet, { x, y, width, height }: Frame): void =>
  sheet.tags.decoration(() => {
    sheet.pdf.lineWidth(0.5).strokeColor(hairline).rect(x, y, width, height).stroke()
  })

const drawMissing = (sheet: Sheet, { x, column }: SetPhotograph, sentence: string, top: number, tall: number): void => {
  frame(sheet, { x, y: top, width: column, height: tall })
  sheet.place(sentence, styles.strong, { x: x + 8, width: column - 16 }, top + 8)
}

/** As wide as its column and as tall as its row, so that pictures of any shape stand in line. */
const drawMat = (sheet: Sheet, { x, y, width, height }: Frame): void => {
  sheet.tags.decoration(() => {
    sheet.pdf.rect(x, y, width, height).fill(mat)
  })
  frame(sheet, { x, y, width, height })
}

const drawPicture = (sheet: Sheet, { photograph, x, column, width, height }: SetPhotograph, picture: Picture, top: number, tall: number): void => {
  const place = { x: x + (column - width) / 2, y: top + (tall - height) / 2, width, height }
  drawMat(sheet, { x, y: top, width: column, height: tall })
  sheet.tags.within('Figure', { alt: photograph.alternative, bbox: [place.x, place.y, place.x + width, place.y + height] }, () =>
    sheet.tags.leaf(() => drawMarkedPicture(sheet, picture, photograph, place)),
  )
  frame(sheet, place)
}

/** `tall` is the height of its row. */
const drawOne = (sheet: Sheet, set: SetPhotograph, labels: ReportDocument['labels'], top: number, tall: number): void => {
  const { picture, x, column, caption, facts } = set
  if (picture === undefined) drawMissing(sheet, set, labels.missingPicture, top, tall)
  else drawPicture(sheet, set, picture, top, tall)
  const captionTop = top + tall + captionGap
  sheet.tags.within('Caption', {}, () =>
    sheet.tags.leaf(() => {
      const written = sheet.setLines(caption, styles.small, { x, width: column }, captionTop)
      sheet.setLines(facts, styles.label, { x, width: column }, captionTop + written)
    }),
  )
}

const captionHeight = ({ caption, facts }: SetPhotograph): number => caption.length * styles.small.leading + facts.length * styles.label.leading

const rowHeight = (set: readonly SetPhotograph[]): number => Math.max(...set.map(({ height }) => height)) + captionGap + Math.max(...set.map(captionHeight))

/** One row set to its size: a little smaller where only so much of the page is left. */
const setRow = (sheet: Sheet, row: readonly PhotographLine[], pictures: Pictures, labels: ReportDocument['labels'], x: number, width: number): SetPhotograph[] => {
  const set = (height: number): SetPhotograph[] => row.map((photograph, index) => setPhotograph(sheet, photograph, pictures, labels, x + index * (width + gutter), width, height))
  const full = set(width * columnShape)
  const over = rowHeight(full) + 10 - sheet.room
  const tall = Math.max(...full.map(({ height }) => height))
  return over > 0 && tall - over >= least ? set(tall - over) : full
}

/** Width of a photograph that stands beside its text. */
const besideWidth = 184

/** A photograph at the right of the text column, with its caption. `text` is the column left of it, `height` what it takes down the page. */
export interface Beside {
  readonly set: SetPhotograph
  readonly text: Column
  readonly height: number
}

/** Sets a photograph to stand beside the text. */
export const setBeside = (sheet: Sheet, photograph: PhotographLine, pictures: Pictures, labels: ReportDocument['labels']): Beside => {
  const { x, width } = sheet.text
  const set = setPhotograph(sheet, photograph, pictures, labels, x + width - besideWidth, besideWidth, besideWidth * columnShape)
  return { set, text: { x, width: width - besideWidth - gutter }, height: set.height + captionGap + captionHeight(set) }
}

/** Draws it from `top` down; the pen stays where it is. */
export const drawBeside = (sheet: Sheet, { set }: Beside, labels: ReportDocument['labels'], top: number): void => drawOne(sheet, set, labels, top, set.height)

/** Photographs two in a row over the whole width, a single one at the left; picture and caption are never parted. `continued` heads those that go over the page. */
export const drawPhotographs = (sheet: Sheet, photographs: readonly PhotographLine[], pictures: Pictures, labels: ReportDocument['labels'], continued?: string): void => {
  const { x } = sheet.whole
  const width = (sheet.whole.width - gutter) / 2
  for (let from = 0; from < photographs.length; from += 2) {
    const set = setRow(sheet, photographs.slice(from, from + 2), pictures, labels, x, width)
    const pictureHeight = Math.max(...set.map(({ height }) => height))
    const page = sheet.pdf.page
    sheet.need(rowHeight(set) + 10)
    if (sheet.pdf.page !== page && continued !== undefined) sheet.y += sheet.place(continued, styles.label, sheet.whole, sheet.y)
    sheet.skip(10)
    for (const each of set) drawOne(sheet, each, labels, sheet.y, pictureHeight)
    sheet.y += rowHeight(set)
  }
}

/** Number, what it shows, file, time and, where it is wanted, place from the camera, and the beginning of the fingerprint it came in with, for every photograph. */
export const drawRegister = (sheet: Sheet, { photographs, labels }: ReportDocument): void => {
  new Table(sheet, [
    { heading: labels.number, share: 0.1, align: 'right' },
    { heading: labels.shows, share: 0.28 },
    { heading: labels.fileName, share: 0.19 },
    { heading: labels.fromTheCamera, share: 0.26 },
    { heading: labels.fingerprint, share: 0.17 },
  ]).draw(
    photographs.map(({ number, shows, fileName, fromTheCamera, byOwnClock, placeFromTheCamera, sha256, original }) => ({
      cells: [
        { text: String(number), style: styles.figures },
        { text: shows === '' ? labels.ofNoCheck : shows },
        { text: fileName },
        { text: [fromTheCamera ?? byOwnClock, placeFromTheCamera].filter((part) => part !== undefined).join('\n') || '–', style: styles.figures },
        { text: [sha256.slice(0, 12), original?.word].filter((part) => part !== undefined).join('\n'), style: styles.figures },
      ],
    })),
  )
}
