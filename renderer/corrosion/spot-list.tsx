import type { RefObject } from 'react'
import { Button } from 'react-aria-components'
import { say } from '../../shared-logic/words/say'
import { useUnits } from '../parts/use-settings'
import { useWords } from '../parts/use-words'
import { VerdictMark } from '../parts/verdict-mark'
import { useIsNarrow } from '../sums/use-is-narrow'
import type { NumberedTrail } from './numbered-trails'
import { sayCells, type SpotCells } from './say-cells'
import style from './spot-list.module.css'

interface SpotListProps {
  readonly spots: readonly NumberedTrail[]
  readonly open: number | undefined
  readonly onOpen: (number: number) => void
  /** The button that opened the spot, to give the focus back to. */
  readonly opener: RefObject<Map<number, HTMLButtonElement>>
}

type SpotProps = Omit<SpotListProps, 'spots'> & { readonly spot: NumberedTrail }

const OpenButton = ({ spot: { number, trail }, open, onOpen, opener }: SpotProps) => {
  const { table } = useWords().screens.corrosion
  const keep = (button: HTMLButtonElement | null): void => {
    if (button) opener.current.set(number, button)
    else opener.current.delete(number)
  }
  return (
    <Button ref={keep} className={style.open ?? ''} aria-label={say(table.open, { number, place: trail.last.spot.place }, 'metric')} aria-expanded={open === number} onPress={() => onOpen(number)}>
      {trail.last.spot.place}
    </Button>
  )
}

const Verdict = ({ spot: { trail: { standing, last } } }: Pick<SpotProps, 'spot'>) => <VerdictMark verdict={standing === 'not looked at again' ? 'not seen' : last.grading.verdict} isWordHidden />

const Row = (props: SpotProps) => {
  const words = useWords()
  const { spot: { number, trail }, open } = props
  const cells = sayCells(words, trail, useUnits())
  return (
    <tr data-open={open === number}>
      <th scope="row" className={style.number}><Verdict spot={props.spot} /> {number}</th>
      <td><OpenButton {...props} /><span className={style.soft}>{cells.about}</span></td>
      <td>{cells.area}</td><td className={style.share}>{cells.share}</td><td>{cells.depth}</td><td className={style.grade}>{cells.grade}</td><td>{cells.standing}</td>
      <td>{cells.remedy}<span className={style.soft}>{cells.by}</span></td>
    </tr>
  )
}

const SpotTable = ({ spots, ...rest }: SpotListProps) => {
  const { table } = useWords().screens.corrosion
  return (
    <table className={style.table}>
      <caption className="visually-hidden">{table.label}</caption>
      <thead>
        <tr>{[table.number, table.place, table.area, table.share, table.depth, table.grade, table.standing, table.remedy].map((heading) => <th key={heading} scope="col">{heading}</th>)}</tr>
      </thead>
      <tbody>{spots.map((spot) => <Row key={spot.number} spot={spot} {...rest} />)}</tbody>
    </table>
  )
}

const cardCells = ['area', 'share', 'depth', 'grade', 'standing', 'remedy'] as const satisfies readonly (keyof SpotCells)[]

const Card = (props: SpotProps) => {
  const words = useWords()
  const { table } = words.screens.corrosion
  const { spot: { number, trail } } = props
  const cells = sayCells(words, trail, useUnits())
  return (
    <li className={style.card}>
      <h2 className={style.cardHead}><Verdict spot={props.spot} /> {number} <OpenButton {...props} /></h2>
      <p className={style.soft}>{cells.about}</p>
      <dl className={style.facts}>
        {cardCells.filter((cell) => cells[cell] !== '').map((cell) => (
          <div key={cell}><dt>{table[cell]}</dt><dd>{cells[cell]}{cell === 'remedy' && cells.by !== '' && `, ${cells.by.toLowerCase()}`}</dd></div>
        ))}
      </dl>
    </li>
  )
}

/** Every spot with its measures, grade and remedy: a table, on a telephone a list of cards. Each opens its course. */
export const SpotList = ({ spots, ...rest }: SpotListProps) => {
  const { table } = useWords().screens.corrosion
  if (!useIsNarrow()) return <SpotTable spots={spots} {...rest} />
  return <ul className={style.cards} aria-label={table.label}>{spots.map((spot) => <Card key={spot.number} spot={spot} {...rest} />)}</ul>
}
