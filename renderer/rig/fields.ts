import { engineForms, hullMaterials } from '../../shared-logic/rig/boat'
import {
  brakeForms, couplerClasses, exposures, frameMaterials, hubLubrications, hullSupports, lampForms, markets, suspensions, trailerBrakes, tyreSchema, winchForms, wirePlugs,
} from '../../shared-logic/rig/trailer'
import type { Quantity } from '../../shared-logic/units/quantity'
import type { rigWords } from '../../shared-logic/words/en/screens/rig'
import type { Draft } from './draft'

export type GroupId = keyof typeof rigWords.groups

interface Placed {
  /** Dotted, as refusals name it. */
  readonly path: string
  /** How much of a line it takes. */
  readonly width: 'wide' | 'half' | 'third'
  /** Asked only where the other answers call for it. */
  readonly when?: (draft: Draft) => boolean
}

/** How one fact of the register is typed or chosen. */
export type RigField = Placed &
  (
    | { readonly kind: 'text'; readonly maxLength: number; readonly isLong?: true; readonly isRequired?: true }
    | { readonly kind: 'identification' | 'hull identification'; readonly maxLength: number }
    | { readonly kind: 'quantity'; readonly quantity: Quantity }
    | { readonly kind: 'number' }
    | { readonly kind: 'choice'; readonly options: readonly string[]; readonly isNumber?: true }
    | { readonly kind: 'list'; readonly options: readonly string[] }
    | { readonly kind: 'flag' }
    | { readonly kind: 'tanks' }
  )

export interface RigGroup {
  readonly id: GroupId
  readonly fields: readonly RigField[]
}

const text = (path: string, maxLength: number, width: Placed['width'] = 'half'): RigField => ({ kind: 'text', path, maxLength, width })
const quantity = (path: string, of: Quantity): RigField => ({ kind: 'quantity', path, quantity: of, width: 'third' })
const choice = (path: string, options: readonly string[]): RigField => ({ kind: 'choice', path, options, width: 'wide' })
const year = (path: string): RigField => ({ kind: 'number', path, width: 'third' })
const count = (path: string): RigField => ({ kind: 'choice', path, options: ['1', '2', '3'], isNumber: true, width: 'wide' })
const flag = (path: string): RigField => ({ kind: 'flag', path, width: 'wide' })

const isBraked = (draft: Draft): boolean => draft['trailer.brakes'] !== undefined && draft['trailer.brakes'] !== 'none'
/** A boat described lies there; asked only while none is. */
const hasNoBoat = (draft: Draft): boolean => !Object.entries(draft).some(([path, value]) => path.startsWith('boat.') && value !== undefined && value !== '')
const hasEngine = (draft: Draft): boolean => draft['boat.engine'] !== 'none'

/** The register's form, in the order a person reads a trailer: papers, then from the ground up, then the boat. */
export const rigGroups: readonly RigGroup[] = [
  {
    id: 'identity',
    fields: [
      { kind: 'text', path: 'name', maxLength: 80, isRequired: true, width: 'half' }, text('owner.name', 120),
      text('owner.contact', 200), { kind: 'text', path: 'owner.address', maxLength: 400, isLong: true, width: 'half' },
    ],
  },
  {
    id: 'plate',
    fields: [
      text('trailer.maker', 80), text('trailer.model', 80),
      { kind: 'identification', path: 'trailer.identificationNumber', maxLength: 40, width: 'wide' },
      year('trailer.builtYear'), text('trailer.registration', 40, 'third'),
      choice('trailer.market', markets),
      quantity('trailer.maximumMassKg', 'mass'), quantity('trailer.massKg', 'mass'), quantity('trailer.axleRatingKg', 'mass'),
    ],
  },
  { id: 'frame', fields: [choice('trailer.frame', frameMaterials), choice('trailer.exposure', exposures), quantity('trailer.lengthM', 'length'), quantity('trailer.widthM', 'length'), quantity('trailer.ballToAxleM', 'length')] },
  { id: 'axles', fields: [count('trailer.axleCount'), choice('trailer.suspension', suspensions), choice('trailer.hubLubrication', hubLubrications)] },
  { id: 'brakes', fields: [choice('trailer.brakes', trailerBrakes), { ...choice('trailer.brakeForm', brakeForms), when: isBraked }, { ...count('trailer.brakedAxleCount'), when: isBraked }] },
  { id: 'coupler', fields: [{ kind: 'list', path: 'trailer.coupler', options: couplerClasses, width: 'third' }, quantity('trailer.ballDiameterM', 'smallLength'), flag('trailer.jack')] },
  {
    id: 'wheels',
    fields: [
      text('trailer.tyre.size', 40, 'third'), { kind: 'number', path: 'trailer.tyre.loadIndex', width: 'third' }, text('trailer.tyre.speedSymbol', 1, 'third'),
      choice('trailer.tyre.loadRange', tyreSchema.shape.loadRange.unwrap().options), quantity('trailer.tyre.placardPressurePa', 'pressure'), flag('trailer.spareWheel'),
    ],
  },
  { id: 'lights', fields: [choice('trailer.lamps', lampForms), choice('trailer.plug', wirePlugs)] },
  { id: 'supports', fields: [choice('trailer.supports', hullSupports), choice('trailer.winch', winchForms)] },
  {
    id: 'boat',
    fields: [
      { kind: 'flag', path: 'trailer.carriesBoat', width: 'wide', when: hasNoBoat },
      text('boat.name', 80), text('boat.maker', 80), text('boat.model', 80), year('boat.builtYear'),
      { kind: 'hull identification', path: 'boat.hullIdentificationNumber', maxLength: 40, width: 'wide' },
      choice('boat.hull', hullMaterials), quantity('boat.lengthM', 'length'), quantity('boat.beamM', 'length'), quantity('boat.dryMassKg', 'mass'),
    ],
  },
  { id: 'engine', fields: [choice('boat.engine', engineForms), { ...quantity('boat.engineMassKg', 'mass'), when: hasEngine }, { kind: 'tanks', path: 'boat.tanks', width: 'wide' }] },
  { id: 'remarks', fields: [{ kind: 'text', path: 'remarks', maxLength: 4_000, isLong: true, width: 'wide' }] },
]
