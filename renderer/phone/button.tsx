import { useEffect, useRef, type ReactNode } from 'react'
import style from './button.module.css'

interface ButtonProps {
  readonly kind?: 'plain' | 'quiet'
  /** It comes in the place of the button that was pressed. */
  readonly takesFocus?: boolean
  readonly onPress: () => void
  readonly children: ReactNode
}

/** A native button: the desktop's would bring half a library with it. */
export const Button = ({ kind = 'plain', takesFocus = false, onPress, children }: ButtonProps) => {
  const button = useRef<HTMLButtonElement>(null)
  useEffect(() => {
    if (takesFocus) button.current?.focus()
  }, [takesFocus])
  return <button ref={button} type="button" className={kind === 'quiet' ? style.quiet : style.plain} onClick={onPress}>{children}</button>
}
