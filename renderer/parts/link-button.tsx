import type { ReactNode } from 'react'
import { Link } from 'wouter'
import { buttonClass, type ButtonKind } from './button'

interface LinkButtonProps {
  readonly to: string
  readonly kind?: ButtonKind
  readonly isWide?: boolean
  /** Carried in the history beside the address. */
  readonly state?: unknown
  readonly children: ReactNode
}

/** A step to another screen that looks like a button; still a link to the keyboard and the screen reader. */
export const LinkButton = ({ to, kind = 'plain', isWide = false, state, children }: LinkButtonProps) => (
  <Link to={to} state={state} className={buttonClass(kind, isWide)}>{children}</Link>
)
