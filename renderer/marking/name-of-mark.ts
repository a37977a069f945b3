import type { MarkLayer } from '../../shared-logic/marking/marks'
import { sayMark, type Reader } from '../../shared-logic/marking/say-marks'
import { say } from '../../shared-logic/words/say'
import type { Chosen } from './sketch'
import type { End } from './use-moving'

/** 'Mark 2: arrow', 'Known length'. */
export const nameOfMark = (layer: MarkLayer, chosen: Chosen, reader: Reader): string => {
  const { named } = reader.words.screens.marking
  if (chosen === 'known') return named.known
  const mark = layer.marks[chosen]
  return mark === undefined ? '' : say(named.mark, { number: chosen + 1, what: sayMark(layer, mark, reader) }, reader.units)
}

/** 'Head of mark 2'. */
export const nameOfEnd = (layer: MarkLayer, chosen: Chosen, end: End, { words, units }: Reader): string => {
  const { named } = words.screens.marking
  if (chosen === 'known') return named.knownEnds[end]
  const kind = layer.marks[chosen]?.kind
  const ends = kind === 'arrow' || kind === 'length' ? named.ends[kind] : named.ends.corner
  return say(ends[end], { number: chosen + 1 }, units)
}
