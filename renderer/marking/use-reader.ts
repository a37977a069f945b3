import { useMemo } from 'react'
import type { Reader } from '../../shared-logic/marking/say-marks'
import { useUnits } from '../parts/use-settings'
import { useWords } from '../parts/use-words'

/** Whoever reads what stands on marks: the same from one drawing to the next. */
export const useReader = (): Reader => {
  const words = useWords()
  const units = useUnits()
  return useMemo(() => ({ words, units }), [words, units])
}
