import type { ReactNode } from 'react'
import style from './button.module.css'

interface ButtonProps {
  readonly kind?: 'plain' | 'quiet'
  readonly label?: string
  readonly onPress: () => void
  readonly children: ReactNode
}

/** A native button: the desktop's would bring half a library with it. */
export const Button = ({ kind = 'plain', label, onPress, children }: ButtonProps) => (
  <button type="button" className={kind === 'quiet' ? style.quiet : style.plain} onClick={onPress} {...(label !== undefined && { 'aria-label': label })}>{children}</button>
)
