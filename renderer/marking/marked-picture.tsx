import type { CSSProperties } from 'react'
import { photographAddress } from '../../shared-logic/contract/contract'
import { sayMarks } from '../../shared-logic/marking/say-marks'
import { turnedSize } from '../../shared-logic/marking/turned'
import type { PictureSize } from '../../shared-logic/measuring/picture-size'
import type { Photograph } from '../../shared-logic/survey/records'
import { classNames } from '../parts/class-names'
import style from './marked-picture.module.css'
import { MarksOver } from './marks-over'
import { useReader } from './use-reader'

interface MarkedPictureProps {
  readonly photograph: Pick<Photograph, 'sha256' | 'widthPx' | 'heightPx' | 'quarterTurns' | 'marks'>
  /** Which preview. */
  readonly size: 'small' | 'large'
  /** What it shows; its marks are added. Empty where what is around it says so already. */
  readonly alt: string
  /** 'cover' fills the box and cuts off what stands over; 'contain' shows the whole. */
  readonly fit?: 'cover' | 'contain'
  readonly className?: string | undefined
  /** How many times larger than the whole it is looked at: its marks do not swell with it. */
  readonly closer?: number
  /** The untouched original over the preview, once it is there. */
  readonly original?: { readonly onShown: (size: PictureSize) => void; readonly onMissing: () => void } | undefined
  /** The preview could not be loaded. */
  readonly onMissing?: () => void
  /** The box: at least its width; its height follows from the picture where none is given. */
  readonly style?: CSSProperties
}

/** A photograph as the surveyor left it: turned as it was turned, its layer of marks over it. The file is the untouched preview, or original. */
export const MarkedPicture = ({ photograph, size, alt, fit = 'cover', closer = 1, original, onMissing, className, style: box }: MarkedPictureProps) => {
  const reader = useReader()
  const { sha256, quarterTurns, marks } = photograph
  const { widthPx, heightPx } = turnedSize(photograph, quarterTurns)
  const said = alt === '' ? '' : [alt, sayMarks(marks, reader)].filter((part) => part !== '').join('; ')
  return (
    <span className={classNames(style.box, className)} style={{ aspectRatio: `${widthPx} / ${heightPx}`, ...box }} data-fit={fit}>
      <img src={photographAddress(sha256, size)} alt={said} className={style.picture} data-turns={quarterTurns} loading={size === 'small' ? 'lazy' : 'eager'} draggable={false} onError={onMissing} />
      {original && <img src={photographAddress(sha256, 'original')} alt="" className={style.picture} data-turns={quarterTurns} draggable={false} onLoad={({ currentTarget: { naturalWidth, naturalHeight } }) => original.onShown({ widthPx: naturalWidth, heightPx: naturalHeight })} onError={original.onMissing} />}
      {marks && <MarksOver layer={marks} quarterTurns={quarterTurns} fit={fit} closer={closer} />}
    </span>
  )
}
