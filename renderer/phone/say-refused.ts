import { largestPhotographBytes } from '../../shared-logic/photographs/limits'
import type { Picture } from './picture'
import { fill, type PhoneWords } from './use-phone-words'

/** Why a picture was not taken: what this page found, else the door's own sentence. */
export const sayRefused = ({ pictures: said }: PhoneWords, { why, sentence }: Picture): string =>
  why === undefined ? (sentence ?? said.why.unsaid) : fill(said.why[why], { megabytes: largestPhotographBytes / 1_000_000 })
