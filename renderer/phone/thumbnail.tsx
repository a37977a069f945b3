import { useEffect, useRef } from 'react'
import style from './thumbnail.module.css'

interface ThumbnailProps {
  readonly small: Blob | undefined
}

/** The small copy of a picture; an empty frame where this browser cannot show it. The words beside it say what it is. */
export const Thumbnail = ({ small }: ThumbnailProps) => {
  const picture = useRef<HTMLImageElement>(null)
  useEffect(() => {
    if (small === undefined || picture.current === null) return undefined
    const address = URL.createObjectURL(small)
    picture.current.src = address
    return () => URL.revokeObjectURL(address)
  }, [small])
  return small === undefined ? <span className={style.frame} aria-hidden="true" /> : <img ref={picture} alt="" className={style.frame} />
}
