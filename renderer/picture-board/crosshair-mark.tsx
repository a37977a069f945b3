import type { PixelPoint } from '../../shared-logic/measuring/measurement'
import style from './stage.module.css'

const arms = 'M-22 0H-5M5 0H22M0 -22V-5M0 5V22'

/** Where the next point goes by key, at a place of the frame. */
export const CrosshairMark = ({ at: [x, y] }: { readonly at: PixelPoint }) => (
  <g transform={`translate(${x} ${y})`}><path d={arms} className={style.casing} /><path d={arms} className={style.cross} /></g>
)
