import { createHash } from 'node:crypto'
import { readFile, stat, writeFile } from 'node:fs/promises'
import { basename, resolve } from 'node:path'
import { refuse } from '../../shared-logic/contract/refusal'
import { measuredArea, type MeasurementGiven } from '../../shared-logic/measuring/area'
import type { Measurement, Outline } from '../../shared-logic/measuring/measurement'
import { measured, type UnitSystem } from '../../shared-logic/units/quantity'
import { en } from '../../shared-logic/words/en'
import { say } from '../../shared-logic/words/say'
import { byteLimit, decode, readHeader } from '../photos/decoder'
import { markedCopy } from '../photos/marked-copy'
import { foundOn, outlineRings } from '../photos/outline-rings'
import { makePreviews } from '../photos/previews'
import { WrongUsage, type Answer, type Command, type Given } from './command'
import { pointsOf, scaleOf, sensitivityOf } from './measuring-words'
import { outputFor, writing } from './output-file'

const words = en.commandLine
const units: UnitSystem = 'metric'

const bytesOf = async (path: string, named: string): Promise<Uint8Array> => {
  const found = await stat(path).catch(() => undefined)
  if (found?.isFile() !== true) return refuse('cli.file-not-readable', { file: named })
  if (found.size > byteLimit) return refuse('photograph.too-large', { name: named, megabytes: byteLimit / 1_000_000 })
  return readFile(path).catch(() => refuse('cli.file-not-readable', { file: named }))
}

const outlineOf = ({ values }: Given): Outline => {
  const { outline, sensitivity } = values
  const isFinding = values['find-rust'] === true
  if ((outline === undefined) !== isFinding) throw new WrongUsage(words.wrongUsage.outlineOrFind)
  if (sensitivity !== undefined && !isFinding) throw new WrongUsage(words.wrongUsage.sensitivityOfOutline)
  return outline === undefined
    ? { by: 'finder', finder: 'rust 1', sensitivity: sensitivityOf(sensitivity ?? '0.5'), strokes: [] }
    : { by: 'polygon', points: pointsOf(outline) }
}

const linesOf = (name: string, { areaM2, uncertaintyM2, faceAreaM2, share, shareLow, shareHigh }: Measurement['result'], isFlat: boolean): string[] => [
  say(words.measured.area, { name, area: measured('area', areaM2), uncertainty: measured('area', uncertaintyM2) }, units),
  ...(faceAreaM2 === undefined || share === undefined ? [] : [say(words.measured.share, { share: measured('ratio', share), face: measured('area', faceAreaM2) }, units)]),
  ...(shareLow === undefined || shareHigh === undefined ? [] : [say(words.measured.span, { low: measured('ratio', shareLow), high: measured('ratio', shareHigh) }, units)]),
  ...(isFlat ? [words.measured.tilt] : []),
]

const run = async (given: Given): Promise<Answer> => {
  const named = given.words[0] ?? ''
  if (given.values.scale === undefined) throw new WrongUsage(words.wrongUsage.noScale)
  const scale = scaleOf(given.values.scale)
  const outline = outlineOf(given)
  const bytes = await bytesOf(resolve(given.workingFolder, named), named)
  const { widthPx, heightPx } = await readHeader(bytes, named)
  const { large } = await makePreviews(await decode(bytes, named))
  const asked: MeasurementGiven = { widthPx, heightPx, scale, outline, ...(given.values.face !== undefined && { face: pointsOf(given.values.face) }) }
  const found = await foundOn(large, asked)
  const measurement: Measurement = { sha256: createHash('sha256').update(bytes).digest('hex'), ...asked, result: measuredArea(asked, found) }
  const rings = outlineRings(asked, found)
  const copy = given.output === undefined ? undefined : outputFor(given, given.output)
  if (copy !== undefined) await writing(copy, async () => writeFile(copy, await markedCopy(large, { measurement, rings, units }), { flag: 'wx' }))
  return {
    lines: [...linesOf(basename(named), measurement.result, scale.kind === 'length'), ...(copy === undefined ? [] : [say(words.wrote, { file: copy }, units)])],
    json: { measurement, rings, ...(copy !== undefined && { copy }) },
  }
}

/** `measure photo.jpg --scale … --outline …`, or `--find-rust`. */
export const measure: Command = { words: [1, 1], options: ['output', 'scale', 'outline', 'face', 'find-rust', 'sensitivity'], run }
