import type { Spot, spotComponents } from '../survey/spot'

type Component = (typeof spotComponents)[number]

interface ComponentRow {
  /** It carries load, brakes or the coupling: loss of metal there is judged. */
  readonly bearsLoad: boolean
  /** Goes under water at a launching. */
  readonly isDipped: boolean
  /** Bought new rather than welded. */
  readonly isReplaced: boolean
  /** Closed sections, whose inside is not seen. */
  readonly isHollow: boolean
}

const row = (bearsLoad: boolean, isDipped: boolean, isReplaced: boolean, isHollow: boolean): ComponentRow => ({ bearsLoad, isDipped, isReplaced, isHollow })

/** What a component is to the trailer. Common practice, no source; what is not named counts as bearing load and dipped. */
export const componentRows: Readonly<Record<Component, ComponentRow>> = {
  tongue: row(true, false, false, true),
  rail: row(true, true, false, true),
  'cross-member': row(true, true, false, true),
  'winch post': row(true, false, false, true),
  coupler: row(true, false, true, false),
  axle: row(true, true, true, true),
  'spring or arm': row(true, true, true, false),
  hanger: row(true, true, false, false),
  'bunk bracket': row(true, true, false, false),
  'roller bracket': row(true, true, false, false),
  mudguard: row(false, true, true, false),
  'lamp bracket': row(false, true, true, false),
  fastener: row(true, true, true, false),
  wheel: row(true, true, true, false),
  other: row(true, true, false, false),
}

/** By the beginning of a position's id. */
const byPosition: readonly (readonly [string, Component])[] = [
  ['tongue', 'tongue'], ['left rail', 'rail'], ['right rail', 'rail'], ['cross-members', 'cross-member'], ['axle', 'axle'], ['all axles', 'axle'],
  ['winch post', 'winch post'], ['bunk brackets', 'bunk bracket'], ['roller brackets', 'roller bracket'],
]

/** The component a spot at this position lies on while none is named; 'other' where the position does not tell. */
export const defaultComponentOf = (position: string): Component => byPosition.find(([start]) => position.startsWith(start))?.[1] ?? 'other'

export const componentOf = ({ component }: Pick<Spot, 'component'>, position?: string): Component => component ?? (position === undefined ? 'other' : defaultComponentOf(position))
