import { useId } from 'react'
import bench from '../picture-board/bench.module.css'
import style from './panel.module.css'

interface SliderProps {
  readonly label: string
  readonly value: number
  readonly min: number
  readonly max: number
  readonly step: number
  readonly says: string
  readonly hint?: string
  readonly onChange: (value: number) => void
}

/** A setting dragged along a line, or moved by arrow keys. */
export const Slider = ({ label, value, min, max, step, says, hint, onChange }: SliderProps) => {
  const id = useId()
  return (
    <div className={style.slider}>
      <div className={style.sliderHead}><label htmlFor={id}>{label}</label><span>{says}</span></div>
      <input id={id} type="range" value={value} min={min} max={max} step={step} aria-valuetext={says} onChange={(event) => onChange(Number(event.currentTarget.value))} />
      {hint !== undefined && <p className={bench.soft}>{hint}</p>}
    </div>
  )
}
