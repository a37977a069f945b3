import type { ReactNode } from 'react'
import { Button as AriaButton, type ButtonProps as AriaButtonProps } from 'react-aria-components'
import style from './button.module.css'
import { classNames } from './class-names'

export type ButtonKind = 'primary' | 'plain' | 'quiet' | 'danger'

export const buttonClass = (kind: ButtonKind, isWide = false): string => classNames(style.button, kind !== 'plain' && style[kind], isWide && style.wide)

interface ButtonProps extends Omit<AriaButtonProps, 'className' | 'style' | 'children'> {
  readonly kind?: ButtonKind
  /** Takes the whole width, as at the bottom of a narrow window. */
  readonly isWide?: boolean
  readonly children: ReactNode
}

/**
 * A button to press. `primary` once on a screen: the next step. While pending it keeps the focus and does nothing; its
 * label says so. (React Aria's own announcement names the button by id, and lives on after a screen that has been left.)
 */
export const Button = ({ kind = 'plain', isWide = false, isPending = false, onPress, type, ...rest }: ButtonProps) => (
  <AriaButton {...rest} {...(isPending ? { type: 'button', 'data-pending': true } : { ...(type && { type }), ...(onPress && { onPress }) })} className={buttonClass(kind, isWide)} />
)
