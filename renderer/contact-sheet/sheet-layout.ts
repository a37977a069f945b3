import { GridLayout, Size, type DropTarget, type GridLayoutOptions } from 'react-aria-components'
import type { SheetPhotograph } from './sheet-photograph'

/** Sizes in px. Every cell is as high as every other, so that none is ever measured while the sheet scrolls. */
export const cellHeightPx = 272
export const gapPx = 8

export const layoutOptions: GridLayoutOptions = {
  minItemSize: new Size(164, cellHeightPx),
  maxItemSize: new Size(280, cellHeightPx),
  minSpace: new Size(gapPx, gapPx),
  maxHorizontalSpace: gapPx,
  preserveAspectRatio: true,
  dropIndicatorThickness: 4,
}

/**
 * The grid of a sheet that scrolls with its page. The library adds how far the list was scrolled to a point that is
 * measured from the list's own top already (adobe/react-spectrum#10597): what it adds is taken off before.
 */
export class SheetLayout extends GridLayout<SheetPhotograph> {
  override getDropTargetFromPoint(x: number, y: number, isValidDropTarget: (target: DropTarget) => boolean): DropTarget {
    const scrolled = this.virtualizer?.visibleRect
    return super.getDropTargetFromPoint(x - (scrolled?.x ?? 0), y - (scrolled?.y ?? 0), isValidDropTarget)
  }
}
