import { tiltNote } from '../measuring/tilt'
import { formatAsWritten, formatQuantity } from '../units/convert'
import { measured, type UnitSystem } from '../units/quantity'
import type { Words } from '../words/en'
import { say } from '../words/say'
import { measuredLength } from './length-of'
import type { Mark, MarkLayer } from './marks'
import { roundedLength } from './rounded-length'

/** What a reader speaks and measures in. */
export interface Reader {
  readonly words: Words
  readonly units: UnitSystem
}

type Length = Extract<Mark, { kind: 'length' }>

/** '42.4 mm ± 1.4 mm'; without a known length in the picture, that the length is not known. */
export const sayLength = ({ scale, ...picture }: MarkLayer, { from, to }: Length, { words, units }: Reader): string => {
  const { on } = words.screens.marking
  if (scale === undefined) return on.noLength
  const { lengthM, uncertaintyM } = roundedLength(measuredLength(scale, picture, from, to), units)
  return say(on.length, { length: measured('smallLength', lengthM), uncertainty: measured('smallLength', uncertaintyM) }, units)
}

/** 'known: 100 mm', in the unit the rule was read in. */
export const sayKnown = ({ lengthM, writtenIn }: NonNullable<MarkLayer['scale']>, { words, units }: Reader): string =>
  say(words.screens.marking.on.known, { length: writtenIn === undefined ? formatQuantity('smallLength', lengthM, units) : formatAsWritten('smallLength', lengthM, writtenIn, units) }, units)

/** One mark in words: 'arrow', '“crack”', '42.4 mm ± 1.4 mm'. */
export const sayMark = (layer: MarkLayer, mark: Mark, reader: Reader): string => {
  const { on } = reader.words.screens.marking
  if (mark.kind === 'length') return sayLength(layer, mark, reader)
  return mark.kind === 'text' ? say(on.text, { text: mark.text }, reader.units) : on.kinds[mark.kind]
}

/** All of a layer for those who do not see it: 'marked: arrow, “crack”, 42.4 mm ± 1.4 mm'; empty where nothing is marked. */
export const sayMarks = (layer: MarkLayer | undefined, reader: Reader): string => {
  if (layer === undefined) return ''
  const parts = [...layer.marks.map((mark) => sayMark(layer, mark, reader)), ...(layer.scale ? [sayKnown(layer.scale, reader)] : [])]
  return parts.length === 0 ? '' : say(reader.words.screens.marking.on.marked, { marks: parts.join(', ') }, reader.units)
}

const toldTiltDegrees = 20

/** Where the lengths of a layer hold, and what the figure after ± covers; undefined where none is told. To stand beside them wherever they are printed or shown. */
export const sayLengthsHold = (layer: MarkLayer | undefined, { words, units }: Reader): string | undefined => {
  const tilt = tiltNote.find(({ degrees }) => degrees === toldTiltDegrees)
  if (tilt === undefined || layer?.scale === undefined || !layer.marks.some(({ kind }) => kind === 'length')) return undefined
  return say(words.screens.marking.on.lengthsHold, { degrees: tilt.degrees, share: `${Math.round(tilt.missingShare * 100)} %` }, units)
}
