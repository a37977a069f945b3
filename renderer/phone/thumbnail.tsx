import { useEffect, useRef } from 'react'
import style from './thumbnail.module.css'

interface ThumbnailProps {
  readonly small: Blob | undefined
}

const Unseen = () => (
  <span className={style.frame} data-unseen="true" aria-hidden="true">
    <svg viewBox="0 0 32 24"><path d="M3 21 12 9l6 7 4-4 7 9ZM22.5 4.5a2 2 0 1 1 0 4 2 2 0 0 1 0-4Z" /></svg>
  </span>
)

/** The small copy of a picture; the sign of one where this browser cannot show it (Chromium reads no HEIC). The words beside it say what it is. */
export const Thumbnail = ({ small }: ThumbnailProps) => {
  const picture = useRef<HTMLImageElement>(null)
  useEffect(() => {
    if (small === undefined || picture.current === null) return undefined
    const address = URL.createObjectURL(small)
    picture.current.src = address
    return () => URL.revokeObjectURL(address)
  }, [small])
  return small === undefined ? <Unseen /> : <img ref={picture} alt="" className={style.frame} />
}
