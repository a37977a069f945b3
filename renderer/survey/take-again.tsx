import type { Photograph } from '../../shared-logic/survey/records'
import { say } from '../../shared-logic/words/say'
import { Button } from '../parts/button'
import { useWords } from '../parts/use-words'
import { choosePicture } from './choose-picture'
import type { Photographs } from './use-photographs'

interface TakeAgainProps {
  readonly photograph: Photograph
  /** As it is called on the screen. */
  readonly name: string
  readonly photographs: Photographs
  /** Opens the camera at its check; without it, or for one that came as a file, the files are opened. */
  readonly onCamera?: ((photograph: Photograph) => void) | undefined
}

/** The way to a better one: the old one goes out when the new one is in, and not before. */
export const TakeAgain = ({ photograph, name, photographs, onCamera }: TakeAgainProps) => {
  const said = useWords().screens.photographs
  const { checkId, position } = photograph
  const isWaiting = photographs.replacing.includes(photograph.id)
  const replaceBy = (file: File): void => {
    photographs.takeAgain(photograph)
    photographs.add([file], checkId === undefined || position === undefined ? undefined : { checkId, position })
  }
  const begin = (): void => {
    if (photograph.source !== 'camera' || onCamera === undefined) return choosePicture(replaceBy)
    photographs.takeAgain(photograph)
    return onCamera(photograph)
  }
  return <Button isPending={isWaiting} onPress={begin} aria-label={say(isWaiting ? said.waitingOf : said.takeAgainOf, { name }, 'metric')}>{isWaiting ? said.waiting : said.takeAgain}</Button>
}
