import type { Rig } from '../../shared-logic/rig/rig'
import { tandemSums } from './tandem-sums'

/** Said in every rig's remarks and in every survey's place: nobody shall take the example for a real rig. */
export const inventedMark = 'EXAMPLE, invented.'

const lbs = (pounds: number): number => Math.round(pounds * 0.453_592_37)
const psi = (pounds: number): number => Math.round(pounds * 6_894.757)

/** A tandem, galvanized, with oil-bath hubs, surge disc brakes and bunks, under a 7 m boat: surveyed and reported. */
export const tandem: Rig = {
  name: 'Example 1: tandem with oil-bath hubs',
  owner: { name: 'Invented Owner, Example Cove', address: '1 Example Landing, Nowhere Harbor', contact: 'nobody@example.invalid' },
  remarks: `${inventedMark} Rig, owner, place and every finding are made up to show the program.`,
  trailer: {
    maker: 'Example Trailers', model: 'Tandem 24', builtYear: 2019, identificationNumber: '1EXAM2427K1000017', market: 'north america', registration: 'EX 1017',
    frame: 'galvanized steel', massKg: lbs(1_450), maximumMassKg: lbs(7_000), axleRatingKg: lbs(3_500), lengthM: 8.1, widthM: 2.59, ballToAxleM: 5.6,
    axleCount: 2, suspension: 'leaf springs', hubLubrication: 'oil bath', brakes: 'surge', brakeForm: 'disc', brakedAxleCount: 2,
    coupler: 'class 4', ballDiameterM: 0.0508, tyre: { size: 'ST205/75R14', loadIndex: 105, speedSymbol: 'M', loadRange: 'D', placardPressurePa: psi(65) },
    spareWheel: true, supports: 'bunks', winch: 'hand, strap', lamps: 'bulbs', plug: '5 flat', jack: true, exposure: 'salt water, not rinsed',
  },
  boat: {
    name: 'Example Tern', maker: 'Example Boats', model: 'Bay 22', builtYear: 2019, hullIdentificationNumber: 'XMP01234A919', hull: 'glass fibre', lengthM: 6.7, beamM: 2.5,
    dryMassKg: 1_450, engine: 'outboard', engineMassKg: 243, tanks: [{ contents: 'petrol', capacityM3: 0.25 }, { contents: 'live well', capacityM3: 0.09 }],
  },
  ...tandemSums,
}

/** The same two years before: neither weighed nor its brakes tested yet. */
const { weighings: _weighings, brakeTest: _brakeTest, ...sinceBefore } = tandem
export const tandemBefore: Rig = sinceBefore

/** One axle, aluminium, no brakes, greased hubs and rollers under a small boat: its survey is under way. */
export const singleAxle: Rig = {
  name: 'Example 2: single-axle aluminium',
  owner: { name: 'Invented Hire Station, Example Lake' },
  remarks: `${inventedMark} Its survey is under way: open it and go on.`,
  trailer: {
    maker: 'Example Trailers', model: 'Skiff 14', builtYear: 2022, market: 'north america', frame: 'aluminium', massKg: 145, maximumMassKg: 680, axleRatingKg: 700,
    lengthM: 4.9, widthM: 1.75, ballToAxleM: 3.2, axleCount: 1, suspension: 'leaf springs', hubLubrication: 'grease', brakes: 'none', coupler: 'class 1', ballDiameterM: 0.0476,
    tyre: { size: '4.80-12', loadRange: 'B', placardPressurePa: psi(60) }, spareWheel: false, supports: 'rollers', winch: 'hand, strap', lamps: 'LED', plug: '4 flat', jack: true,
  },
  boat: { name: 'Example Wren', hull: 'aluminium', lengthM: 4.2, beamM: 1.6, dryMassKg: 160, engine: 'outboard', engineMassKg: 52 },
}

/** A painted tandem on torsion arms with electric over hydraulic brakes; much of it is not known, and nobody has walked round it yet. */
export const painted: Rig = {
  name: 'Example 3: painted tandem, electric over hydraulic',
  owner: { name: 'Invented Seller, Example Quay' },
  remarks: `${inventedMark} No survey yet. Some of its data are not known: what depends on them is asked all the same.`,
  trailer: {
    builtYear: 2011, market: 'north america', frame: 'painted steel', maximumMassKg: lbs(12_000), axleCount: 2, suspension: 'torsion arms',
    brakes: 'electric over hydraulic', brakeForm: 'disc', coupler: 'class 4', lamps: 'LED', plug: '7 blade', supports: 'bunks', winch: 'electric, strap',
  },
  boat: { name: 'Example Heron', hull: 'glass fibre', lengthM: 8.9, beamM: 2.9, engine: 'sterndrive', tanks: [{ contents: 'petrol', capacityM3: 0.42 }, { contents: 'fresh water', capacityM3: 0.08 }, { contents: 'waste water', capacityM3: 0.06 }] },
}
