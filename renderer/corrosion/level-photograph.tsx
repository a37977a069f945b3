import { useCallback, useMemo, useState } from 'react'
import { photographAddress } from '../../shared-logic/contract/contract'
import { roundLengthWithin } from '../../shared-logic/measuring/scale-bar'
import { composed, toFrame, type LevelPicture } from '../../shared-logic/measuring/level-picture'
import type { Measurement } from '../../shared-logic/measuring/measurement'
import { workingEdgePx } from '../../shared-logic/measuring/pixels'
import { toSurface, type SurfaceMap } from '../../shared-logic/measuring/surface-map'
import { browserEngine, useComputing } from '../measuring/use-computing'
import { useUnits } from '../parts/use-settings'
import style from './photographs.module.css'

/** A frame's own units; the picture grows with the column. */
export const frame = { width: 400, height: 300 } as const

const cssMatrix = ([a, b, c, d, e, f, g, h, i]: SurfaceMap): string => `matrix3d(${[a, d, 0, g, b, e, 0, h, 0, 0, 1, 0, c, f, 0, i].join(',')})`

/** Outline in px of the original as outline in the frame: straight lines stay straight. */
const laidOut = (outline: string, map: SurfaceMap): string =>
  outline.replaceAll(/(-?[\d.]+) (-?[\d.]+)/g, (_, x: string, y: string) => toSurface(map, [Number(x), Number(y)]).map((value) => value.toFixed(1)).join(' '))

/** How wide a frame stands on the screen, px. */
const useColumn = (): { readonly columnPx: number; readonly measure: (element: HTMLElement | null) => (() => void) | undefined } => {
  const [columnPx, setColumnPx] = useState<number>(frame.width)
  const measure = useCallback((element: HTMLElement | null) => {
    if (element === null || typeof ResizeObserver === 'undefined') return undefined
    const watching = new ResizeObserver(() => setColumnPx(element.clientWidth))
    watching.observe(element)
    return () => watching.disconnect()
  }, [])
  return { columnPx, measure }
}

interface LevelPhotographProps {
  readonly measurement: Measurement
  readonly picture: LevelPicture
  /** Of the surface across the frame: the same for every photograph of the spot. */
  readonly widthM: number
  readonly name: string
}

/** A measured photograph laid level at the scale of its fellows, its outline and a scale bar over it. */
export const LevelPhotograph = ({ measurement, picture, widthM, name }: LevelPhotographProps) => {
  const units = useUnits()
  const { columnPx, measure } = useColumn()
  const [image, setImage] = useState<HTMLImageElement>()
  const wanted = useMemo(() => ({ given: measurement, isScaled: false }), [measurement])
  const { outline } = useComputing(image, wanted, browserEngine)
  const map = useMemo(() => toFrame(picture, widthM, frame), [picture, widthM])
  const shown = useMemo(() => toFrame(picture, widthM, { width: columnPx, height: (columnPx * frame.height) / frame.width }), [picture, widthM, columnPx])
  const shrink = Math.min(1, workingEdgePx / Math.max(measurement.widthPx, measurement.heightPx))
  const bar = roundLengthWithin(widthM * 0.3, units)
  const barLong = (bar.lengthM / widthM) * frame.width
  const foot = frame.height - 16
  return (
    <div ref={measure} className={style.frame} data-mm-across={Math.round(widthM * 1000)}>
      <img
        src={photographAddress(measurement.sha256, 'large')} alt="" onLoad={({ currentTarget }) => setImage(currentTarget)}
        style={{ width: measurement.widthPx * shrink, height: measurement.heightPx * shrink, transform: cssMatrix(composed(shown, [1 / shrink, 0, 0, 0, 1 / shrink, 0, 0, 0, 1])) }}
      />
      <svg viewBox={`0 0 ${frame.width} ${frame.height}`} role="img" aria-label={name}>
        {outline !== '' && [style.under, style.over].map((line) => <path key={line} d={laidOut(outline, map)} className={line} fillRule="evenodd" />)}
        <g className={style.bar}>
          <rect x={8} y={foot - 26} width={Math.max(barLong + 16, 68)} height={36} className={style.plate} />
          <path d={`M16 ${foot - 4} v8 M16 ${foot} h${barLong} m0 -4 v8`} className={style.barLine} />
          <text x={16} y={foot - 9} fontSize={16}>{bar.label}</text>
        </g>
      </svg>
    </div>
  )
}
