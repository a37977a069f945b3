import { memo, useRef, type MouseEvent, type ReactNode } from 'react'
import { Link } from 'wouter'
import { classNames } from './class-names'
import style from './page.module.css'
import { useArrival } from './use-arrival'
import { useWords } from './use-words'

export interface Crumb {
  readonly label: string
  readonly to: string
}

interface PageProps {
  readonly title: string
  /** One soft line below the title. */
  readonly subtitle?: ReactNode
  /** The way back, outermost first; the yard is always there. */
  readonly crumbs?: readonly Crumb[]
  /** What can be done here, at the right of the title. */
  readonly actions?: ReactNode
  /** `reading`: a column of text; `wide`: up to 1280 px; `full`: all there is, as for the walk. */
  readonly width?: 'reading' | 'wide' | 'full'
  /** Keeps the heading for the screen reader where the screen shows its title in its own way. */
  readonly isTitleHidden?: boolean
  readonly children: ReactNode
}

const Sign = () => (
  <svg className={style.sign} viewBox="0 0 32 24" width="28" height="21" aria-hidden="true">
    <path d="M2 4Q16 18 30 4" fill="none" stroke="var(--select)" strokeWidth="2.5" />
    <path d="M2 17H30M8 17V23M24 17V23" fill="none" stroke="currentColor" strokeWidth="2" />
  </svg>
)

const Header = memo(({ crumbs, isFull }: { readonly crumbs: readonly Crumb[]; readonly isFull: boolean }) => {
  const { shell } = useWords().screens
  return (
    <header className={style.header}>
      <div className={classNames(style.bar, !isFull && style.wide)}>
        <Link to="/" className={style.name}><Sign />{shell.programName}</Link>
        <nav className={style.crumbs} aria-label={shell.whereYouAre}>
          <ol>
            {[...(crumbs.length > 0 ? [{ label: shell.yard, to: '/' }] : []), ...crumbs].map((crumb) => (
              <li key={crumb.to} className={style.crumb}><Link to={crumb.to}>{crumb.label}</Link></li>
            ))}
          </ol>
        </nav>
        <Link to="/settings" className={style.settings}>{shell.settings}</Link>
      </div>
    </header>
  )
})
Header.displayName = 'Header'

const noCrumbs: readonly Crumb[] = []

/** The frame of every screen: the program's name, the way back, the title, and what can be done. */
export const Page = ({ title, subtitle, crumbs = noCrumbs, actions, width = 'wide', isTitleHidden = false, children }: PageProps) => {
  const { shell } = useWords().screens
  const heading = useArrival(title, shell.programName)
  const main = useRef<HTMLElement>(null)
  const skip = (event: MouseEvent): void => {
    event.preventDefault()
    main.current?.focus()
  }
  return (
    <>
      <a href="#main" className={style.skip} onClick={skip}>{shell.skip}</a>
      <Header crumbs={crumbs} isFull={width === 'full'} />
      <main ref={main} id="main" tabIndex={-1} className={classNames(style.main, width !== 'full' && style[width])}>
        <div className={isTitleHidden ? 'visually-hidden' : style.head}>
          <div className={style.titles}>
            <h1 ref={heading} tabIndex={-1}>{title}</h1>
            {subtitle !== undefined && <p className={style.subtitle}>{subtitle}</p>}
          </div>
          {actions !== undefined && !isTitleHidden && <div className={style.actions}>{actions}</div>}
        </div>
        {children}
      </main>
    </>
  )
}
