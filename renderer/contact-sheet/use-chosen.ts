import { useMemo, useState } from 'react'
import type { SheetPhotograph } from './sheet-photograph'

interface Chosen {
  readonly ids: ReadonlySet<string>
  /** Those chosen that are shown, in the order shown: nothing is done to what is not seen. */
  readonly photographs: readonly SheetPhotograph[]
  readonly choose: (ids: ReadonlySet<string>) => void
}

export const useChosen = (shown: readonly SheetPhotograph[]): Chosen => {
  const [ids, choose] = useState<ReadonlySet<string>>(new Set())
  const photographs = useMemo(() => shown.filter(({ id }) => ids.has(id)), [shown, ids])
  return { ids, photographs, choose }
}
