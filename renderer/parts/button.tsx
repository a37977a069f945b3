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

/** A button to press. `primary` once on a screen: the next step. */
export const Button = ({ kind = 'plain', isWide = false, ...rest }: ButtonProps) => <AriaButton {...rest} className={buttonClass(kind, isWide)} />
