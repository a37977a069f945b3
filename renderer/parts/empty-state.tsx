import type { ReactNode } from 'react'
import style from './empty-state.module.css'

interface EmptyStateProps {
  readonly title: string
  readonly children: ReactNode
  /** The next steps. */
  readonly actions?: ReactNode
}

/** What a place is for, while nothing is there, and what to do next. */
export const EmptyState = ({ title, children, actions }: EmptyStateProps) => (
  <section className={style.empty}>
    <h2>{title}</h2>
    {children}
    {actions !== undefined && <div className={style.actions}>{actions}</div>}
  </section>
)
