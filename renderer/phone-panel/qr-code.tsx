import { encodeQR } from 'qr'
import { useMemo } from 'react'
import style from './phone-panel.module.css'

interface QrCodeProps {
  readonly text: string
  readonly label: string
}

/** Modules of light around the code. Source: ISO/IEC 18004, quiet zone of 4 modules. */
const quietModules = 4

/** Each dark module as a square of one unit, in one path. */
const pathOf = (rows: readonly (readonly boolean[])[]): string =>
  rows.flatMap((row, y) => row.flatMap((isDark, x) => (isDark ? [`M${x} ${y}h1v1h-1z`] : []))).join('')

/** A QR code, always dark on light: readers do not expect the reverse, and a code is read by cameras, not by eyes. */
export const QrCode = ({ text, label }: QrCodeProps) => {
  const rows = useMemo(() => encodeQR(text, 'raw', { ecc: 'medium', border: quietModules }), [text])
  return (
    <svg viewBox={`0 0 ${rows.length} ${rows.length}`} role="img" aria-label={label} shapeRendering="crispEdges" className={style.code}>
      <rect width={rows.length} height={rows.length} fill="#ffffff" />
      <path d={pathOf(rows)} fill="#000000" />
    </svg>
  )
}
