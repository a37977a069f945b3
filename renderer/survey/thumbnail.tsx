import { useState } from 'react'
import type { Photograph } from '../../shared-logic/survey/records'
import { say } from '../../shared-logic/words/say'
import { shortWarnings } from '../../shared-logic/words/say-photograph'
import { MarkedPicture } from '../marking/marked-picture'
import { Button } from '../parts/button'
import { useWords } from '../parts/use-words'
import style from './photographs.module.css'

interface ThumbnailProps {
  readonly photograph: Photograph
  readonly name: string
  readonly onPress: () => void
}

/** A small picture to open, with what may be wrong with it in a word, and whether it cannot be read; an item of a list. */
export const Thumbnail = ({ photograph, name, onPress }: ThumbnailProps) => {
  const words = useWords()
  const { view, unreadableShort } = words.screens.survey.photographs
  const [isMissing, setMissing] = useState(false)
  const warned = [...(isMissing ? [unreadableShort] : []), ...shortWarnings(words, photograph)].join(', ')
  const called = warned === '' ? name : say(words.screens.photographs.warned, { name, warnings: warned.toLowerCase() }, 'metric')
  return (
    <li>
      <Button kind="quiet" onPress={onPress} aria-label={say(view, { name: called }, 'metric')}>
        {isMissing ? <span className={style.small} /> : <MarkedPicture photograph={photograph} size="small" alt="" className={style.small} onMissing={() => setMissing(true)} />}
      </Button>
      {warned !== '' && <span className={style.warned} aria-hidden="true">{warned}</span>}
    </li>
  )
}
