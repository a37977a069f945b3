import { Button } from '../parts/button'
import { useWords } from '../parts/use-words'
import style from './bench.module.css'
import { zoomStep } from './use-crosshair'
import type { ViewControl } from './use-view'

/** Closer, further, and the whole picture. */
export const ZoomButtons = ({ viewed }: { readonly viewed: ViewControl }) => {
  const said = useWords().screens.pictureBoard
  return (
    <div className={style.zoom}>
      <Button onPress={() => viewed.zoom(1 / zoomStep)} aria-label={said.zoomOut}>−</Button>
      <Button onPress={viewed.fit}>{said.fit}</Button>
      <Button onPress={() => viewed.zoom(zoomStep)} aria-label={said.zoomIn}>+</Button>
    </div>
  )
}
