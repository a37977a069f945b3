import style from './turn-sign.module.css'

const paths = { left: 'M3 2.5v4h4M3.3 6.2A5.5 5.5 0 1 1 2.6 9.5', right: 'M13 2.5v4h-4M12.7 6.2A5.5 5.5 0 1 0 13.4 9.5' } as const

/** A quarter turn, drawn; the button it stands in has its name. */
export const TurnSign = ({ to }: { readonly to: keyof typeof paths }) => <svg viewBox="0 0 16 16" className={style.sign} aria-hidden="true"><path d={paths[to]} /></svg>
