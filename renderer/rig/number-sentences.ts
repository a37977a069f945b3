import { checkHullNumber } from '../../shared-logic/identity/hin'
import { checkIdentificationNumber } from '../../shared-logic/identity/vin'
import type { Words } from '../../shared-logic/words/en'
import { say } from '../../shared-logic/words/say'

/** What an identification number's check digit says, while it is typed. Characters are counted, so units play no part. */
export const sayIdentificationNumber = (words: Words, text: string): string | undefined => {
  if (text.trim() === '') return undefined
  const found = checkIdentificationNumber(text)
  const { number } = words.screens.rig
  if (found.kind === 'valid') return found.allSame ? number['all same'] : number.valid
  const { kind, ...values } = found
  return say(number[kind], values, 'metric')
}

/** What a hull identification number's form says, while it is typed. */
export const sayHullNumber = (words: Words, text: string): string | undefined => {
  if (text.trim() === '') return undefined
  const found = checkHullNumber(text)
  const { hull } = words.screens.rig
  if (found.kind !== 'valid') {
    const { kind, ...values } = found
    return say(hull[kind], values, 'metric')
  }
  const { maker, serial, modelYear, month, year } = found
  return found.form === 'older' || year === undefined
    ? say(hull['valid older'], { maker, serial, modelYear }, 'metric')
    : say(hull.valid, { maker, serial, modelYear, when: `${String(month).padStart(2, '0')}/${year}` }, 'metric')
}
