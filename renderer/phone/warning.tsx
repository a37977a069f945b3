import { useState } from 'react'
import { Button } from './button'
import { FileButton } from './file-button'
import type { Handover } from './handover'
import type { HandoverView } from './handover-view'
import { Thumbnail } from './thumbnail'
import { usePhoneWords } from './use-phone-words'
import style from './warning.module.css'

interface WarningProps {
  readonly view: HandoverView
  readonly handover: Handover
}

/** What the desktop finds wrong with the last picture, while the person still stands before it. Never a refusal. */
export const Warning = ({ view, handover }: WarningProps) => {
  const { pictures: said, checks } = usePhoneWords()
  const [settled, setSettled] = useState<ReadonlySet<string>>(() => new Set(view.pictures.map(({ id }) => id)))
  const picture = view.pictures.findLast(({ id, warnings }) => warnings.length > 0 && !settled.has(id))
  const settle = (): void => setSettled(new Set(view.pictures.map(({ id }) => id)))
  return (
    <div role="alert" className={style.place}>
      {picture !== undefined && (
        <div className={style.warning}>
          <Thumbnail small={picture.small} />
          <div className={style.words}>
            <strong>{picture.place?.title ?? checks.none}</strong>
            {picture.warnings.map((warning) => <p key={warning}>{warning}</p>)}
          </div>
          <div className={style.acts}>
            <Button onPress={settle}>{said.keep}</Button>
            <FileButton isCamera onFiles={(files) => { settle(); void handover.add(files, picture.place) }}>{said.takeAgain}</FileButton>
          </div>
        </div>
      )}
    </div>
  )
}
