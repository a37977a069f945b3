import type { PictureSize } from '../../shared-logic/measuring/picture-size'
import type { Reader } from '../../shared-logic/marking/say-marks'
import { say } from '../../shared-logic/words/say'
import { nameOfMark } from './name-of-mark'
import { layerOf, type Chosen, type Sketch } from './sketch'

/** The one that a step of the history changed; undefined where both are the same. */
const changedBetween = (before: Sketch, after: Sketch): Chosen | undefined => {
  const longer = before.marks.length > after.marks.length ? before.marks : after.marks
  const which = [...longer.keys()].find((index) => before.marks[index] !== after.marks[index])
  return which ?? (before.known === after.known ? undefined : 'known')
}

/** What became of it: a mark out of the row moves those behind it, so the length of the row tells. */
const becameOf = (before: Sketch, after: Sketch, which: Chosen): 'gone' | 'there' | 'changed' => {
  const count = (sketch: Sketch): number => (which === 'known' ? Number(sketch.known !== undefined) : sketch.marks.length)
  return count(after) < count(before) ? 'gone' : count(after) > count(before) ? 'there' : 'changed'
}

/** 'Undone. Mark 1: arrow is gone.' */
export const sayStep = (step: 'undone' | 'redone', before: Sketch, after: Sketch, size: PictureSize, reader: Reader): string => {
  const which = changedBetween(before, after)
  if (which === undefined) return ''
  const became = becameOf(before, after, which)
  const name = nameOfMark(layerOf(became === 'gone' ? before : after, size), which, reader)
  return say(reader.words.screens.marking.steps[step][became], { name }, reader.units)
}
