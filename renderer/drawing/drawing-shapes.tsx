import type { Shape } from '../../shared-logic/drawings/drawing'
import styles from './drawing.module.css'

const roleClass = (prefix: 'stroke' | 'fill', role: string | undefined): string => styles[`${prefix}-${(role ?? 'none').replace(' ', '-')}`] ?? ''

/** The strokes of a drawing as SVG; colours come from the theme by role. */
export function DrawingShapes({ shapes }: { readonly shapes: readonly Shape[] }) {
  return shapes.map((shape, index) => {
    const className = [roleClass('stroke', shape.stroke), roleClass('fill', shape.fill), shape.dashed ? styles['dashed'] : ''].join(' ')
    // A drawing is made afresh from data: its strokes have no identity beyond their order.
    const key = `${shape.kind} ${index}`
    if (shape.kind === 'path') return <path key={key} d={shape.d} className={className} strokeWidth={shape.weight ?? 2} />
    if (shape.kind === 'circle') return <circle key={key} cx={shape.x} cy={shape.y} r={shape.r} className={className} strokeWidth={shape.weight ?? 2} />
    return (
      <text key={key} x={shape.x} y={shape.y} fontSize={shape.size} textAnchor={shape.anchor ?? 'start'} className={`${styles['text']} ${roleClass('fill', shape.fill)} ${shape.bold ? styles['bold'] : ''}`}>
        {shape.text}
      </text>
    )
  })
}
