import { cleanup, fireEvent, screen, waitFor, within } from '@testing-library/react'
import userEvent from '@testing-library/user-event'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import type { Rig } from '../../../shared-logic/rig/rig'
import { wholeRig } from '../../shared-logic/sums/a-rig'
import { keptRigs, openSheet, rigId, today } from './a-sheet'

const degree = Math.PI / 180
type Asked = readonly { name: string; input: unknown }[]
const last = (asked: Asked): Rig | undefined => keptRigs(asked).at(-1)
const part = (name: string): HTMLElement => screen.getByRole('region', { name })
const write = (within_: HTMLElement, label: string | RegExp, value: string): void => { fireEvent.change(within(within_).getByRole('textbox', { name: label }), { target: { value } }) }
const leave = (field: HTMLElement): void => { fireEvent.blur(field) }

const strapped = (): Rig => ({ ...wholeRig(), tieDown: { straps: [{ position: 'transom left', place: 'transom', route: 'direct', ratedN: 6_000 }] } })

/** Opens the sheet and everything on it that is folded. */
const open = async (rig: Rig): Promise<Asked> => {
  const { asked, container } = openSheet(rig)
  // Until the settings are there, units are the ones it begins with.
  await screen.findByDisplayValue('5 m', {}, { timeout: 40_000 })
  for (const fold of container.querySelectorAll('details')) fold.open = true
  return asked
}

beforeEach(() => {
  window.location.hash = `/rigs/${rigId}/sums`
  Element.prototype.scrollIntoView = () => undefined
  window.scrollTo = () => undefined
})
afterEach(cleanup)

describe('a weighing', { timeout: 120_000 }, () => {
  const begin = async (method: string): Promise<HTMLElement> => {
    await userEvent.click(screen.getByRole('button', { name: 'Add a weighing' }))
    const form = screen.getByRole('group', { name: 'New weighing' })
    await userEvent.click(within(form).getByRole('radio', { name: method }))
    return form
  }

  it.each([
    ['Coupling and axles on scales', [['Scale under the coupling', '180 kg'], ['All axles together', '1500 kg']], { method: 'tongue and axles', date: today, couplingKg: 180, axlesKg: 1500 }],
    ['Public weighbridge, with the tow vehicle', [['Tow vehicle alone', '2000 kg'], ['Tow vehicle’s axles, coupled', '2180 kg'], ['Trailer’s axles alone', '1500 kg']], { method: 'weighbridge', date: today, towAloneKg: 2000, towCoupledKg: 2180, trailerAxlesKg: 1500 }],
    ['Uncoupled, scales under stand and wheels', [['Scale under the stand', '200 kg'], ['Ball centre to the stand', '0.4 m'], ['Left wheels', '740 kg'], ['Right wheels', '760 kg']], { method: 'pads', date: today, standKg: 200, standAftOfBallM: 0.4, leftKg: 740, rightKg: 760 }],
    ['Nose raised, for the height of the centre of mass', [['Total mass', '1700 kg'], ['Coupling, level', '180 kg'], ['Coupling, nose raised', '165 kg'], ['Height of the weighed point, level', '0.45 m'], ['Angle raised', '10']], { method: 'nose raised', date: today, totalKg: 1700, couplingLevelKg: 180, couplingRaisedKg: 165, couplingHeightM: 0.45, raisedRad: 10 * degree }],
  ] as const)('by “%s” asks what that method shows, and is kept as a whole', async (method, figures, kept) => {
    const asked = await open(wholeRig())
    const form = await begin(method)
    expect(within(form).getByText(/^You need /)).toBeDefined()
    const keep = within(form).getByRole<HTMLButtonElement>('button', { name: 'Keep this weighing' })
    for (const [label, value] of figures) {
      expect(keep.disabled).toBe(true)
      write(form, label, value)
    }
    await userEvent.click(keep)
    await waitFor(() => expect(last(asked)?.weighings).toEqual([kept]))
    expect(screen.queryByRole('group', { name: 'New weighing' })).toBeNull()
  })

  it('of each axle takes left and right, or the axle as a whole', async () => {
    const asked = await open(wholeRig())
    const form = await begin('Each axle by itself, coupled')
    for (const [label, value] of [['Axle 1, left wheel', '380 kg'], ['Axle 1, right wheel', '370 kg'], ['Axle 2, left wheel', '400 kg']] as const) write(form, label, value)
    expect(within(form).getByText('Still needed: Axle 2, right wheel.')).toBeDefined()
    write(form, 'Axle 2, right wheel', '395 kg')
    await userEvent.click(within(form).getByRole('button', { name: 'Keep this weighing' }))
    await waitFor(() => expect(last(asked)?.weighings).toEqual([{ method: 'each axle', date: today, axles: [{ leftKg: 380, rightKg: 370 }, { leftKg: 400, rightKg: 395 }] }]))
    await userEvent.click(screen.getByRole('button', { name: /^Change the weighing of 25 November 2026/ }))
    const again = screen.getByRole('group', { name: 'This weighing' })
    await userEvent.click(within(again).getByRole('radio', { name: 'As a whole' }))
    write(again, 'Axle 1, whole axle', '750 kg')
    write(again, 'Axle 2, whole axle', '795 kg')
    await userEvent.click(within(again).getByRole('button', { name: 'Keep this weighing' }))
    await waitFor(() => expect(last(asked)?.weighings).toEqual([{ method: 'each axle', date: today, axles: [{ massKg: 750 }, { massKg: 795 }] }]))
    await userEvent.click(screen.getByRole('button', { name: /^Remove the weighing of 25 November 2026/ }))
    await waitFor(() => expect(last(asked)?.weighings).toEqual([]))
  })

  it('is not kept while a figure of it cannot be right or cannot be read, and the sentence names the field', async () => {
    const asked = await open(wholeRig())
    const form = await begin('Nose raised, for the height of the centre of mass')
    const keep = within(form).getByRole<HTMLButtonElement>('button', { name: 'Keep this weighing' })
    for (const [label, value] of [['Total mass', '1700 kg'], ['Coupling, level', '180 kg'], ['Coupling, nose raised', '165 kg'], ['Height of the weighed point, level', '0.45 m'], ['Angle raised', '95°']] as const) write(form, label, value)
    expect(within(form).getByText(/^At most 90° can be right for “Angle raised”/)).toBeDefined()
    expect(keep.disabled).toBe(true)
    write(form, 'Angle raised', '10 deg')
    write(form, 'Coupling, level', '1800 kg')
    expect(within(form).getByText(/^Total mass: the coupling weighed more than the whole/)).toBeDefined()
    expect(keep.disabled).toBe(true)
    write(form, 'Coupling, level', '180 stone')
    leave(within(form).getByRole('textbox', { name: 'Coupling, level' }))
    expect(within(form).getByText(/“stone” is not a unit known here/)).toBeDefined()
    expect(keep.disabled).toBe(true)
    expect(keptRigs(asked)).toEqual([])
  })
})

describe('a strap', { timeout: 120_000 }, () => {
  const strap = (): HTMLElement => part('Straps')
  const straps = (asked: Asked) => last(asked)?.tieDown?.straps

  it('takes what its label, its fittings and its anchor bear', async () => {
    const asked = await open(strapped())
    write(strap(), 'Breaking strength on its label', '18 kN')
    write(strap(), 'Rating of hooks and tensioner', '5 kN')
    write(strap(), 'Rating of the weaker anchor', '4 kN')
    await waitFor(() => expect(straps(asked)?.[0]).toMatchObject({ ratedN: 6_000, breakingN: 18_000, fittingRatedN: 5_000, anchorRatedN: 4_000 }))
  })

  it('leads by angles, kept once all four are told; over 90 degrees is refused by name', async () => {
    const asked = await open(strapped())
    await userEvent.click(within(strap()).getByRole('radio', { name: 'By angles' }))
    write(strap(), 'Angle below level', '100')
    expect(within(strap()).getByText(/^At most 90° can be right for “Angle below level”/)).toBeDefined()
    write(strap(), 'Angle below level', '40')
    write(strap(), 'Angle off the long axis', '25°')
    await userEvent.click(within(strap()).getByRole('radio', { name: 'Forward' }))
    expect(within(strap()).getByText(/^“Side it leads to” is needed as well/)).toBeDefined()
    expect(straps(asked)?.[0]?.angles).toBeUndefined()
    await userEvent.click(within(strap()).getByRole('radio', { name: 'To the left' }))
    await waitFor(() => expect(straps(asked)?.[0]?.angles).toEqual({ downRad: 40 * degree, offRad: 25 * degree, leads: 'forward', side: 'left' }))
    expect(within(strap()).queryByText(/is needed as well/)).toBeNull()
  })

  it('leads by its two measured ends, says what they come to, and turns into angles', async () => {
    const asked = await open(strapped())
    await userEvent.click(within(strap()).getByRole('radio', { name: 'By both ends, measured' }))
    const boat = within(strap()).getByRole('group', { name: 'End on the boat' })
    const trailer = within(strap()).getByRole('group', { name: 'End on the trailer' })
    write(boat, 'Behind the ball', '7 m')
    write(boat, 'Right of the middle', '-0.7 m')
    expect(within(boat).getByText('“End on the boat, above the ground” is needed as well; nothing is kept of it until then.')).toBeDefined()
    write(boat, 'Above the ground', '1 m')
    write(trailer, 'Behind the ball', '6.7 m')
    write(trailer, 'Right of the middle', '-1.1 m')
    write(trailer, 'Above the ground', '0.5 m')
    await waitFor(() => expect(straps(asked)?.[0]).toMatchObject({ boat: { aftOfBallM: 7, toRightM: -0.7, heightM: 1 }, trailer: { aftOfBallM: 6.7, toRightM: -1.1, heightM: 0.5 } }))
    // atan2(0.5, 0.5) below level; atan2(0.4, 0.3) off the axis; √(0.3² + 0.4² + 0.5²) long.
    expect(within(strap()).getByText('So it leads forward and to the left, 45° below level and 53.1° off the long axis, 0.71 m long.')).toBeDefined()
    await userEvent.click(within(strap()).getByRole('radio', { name: 'By angles' }))
    await waitFor(() => expect(straps(asked)?.[0]?.angles?.downRad).toBeCloseTo(Math.PI / 4, 9))
    expect(straps(asked)?.[0]?.angles).toMatchObject({ leads: 'forward', side: 'left' })
    expect(straps(asked)?.[0]?.boat).toBeUndefined()
  })

  it('counts on no end while one of its figures is wrong', async () => {
    const ends = { boat: { aftOfBallM: 7, toRightM: -0.7, heightM: 1 }, trailer: { aftOfBallM: 6.7, toRightM: -1.1, heightM: 0.5 } }
    const rig = strapped()
    const asked = await open({ ...rig, tieDown: { straps: (rig.tieDown?.straps ?? []).map((each) => ({ ...each, ...ends })) } })
    expect(within(part('Tie-down')).queryByRole('button', { name: /^The strap’s end on the boat/ })).toBeNull()
    write(within(strap()).getByRole('group', { name: 'End on the boat' }), 'Above the ground', '9 m')
    expect(within(strap()).getByText(/^At most 6 m can be right for “End on the boat, above the ground”/)).toBeDefined()
    expect(await within(part('Tie-down')).findByRole('button', { name: /^The strap’s end on the boat/ })).toBeDefined()
    expect(keptRigs(asked)).toEqual([])
  })
})

describe('the other fields of the sums', { timeout: 120_000 }, () => {
  it('gear has a height, for the height of the centre of mass', async () => {
    const asked = await open(wholeRig())
    const fresh = screen.getByRole('group', { name: 'New gear' })
    write(fresh, 'Height above the ground', '9 m')
    expect(within(fresh).getByText(/^At most 6 m can be right for “Height above the ground”/)).toBeDefined()
    write(screen.getByRole('group', { name: 'Anchor' }), 'Height above the ground', '0.8 m')
    await waitFor(() => expect(last(asked)?.loading?.gear?.[0]?.heightM).toBe(0.8))
  })

  it('a tank is told by its share or by its volume, never more than it holds', async () => {
    const asked = await open(wholeRig())
    const tank = screen.getByRole('group', { name: /^Tank 2, fresh water/ })
    write(tank, 'Share of the tank filled', '')
    await waitFor(() => expect(last(asked)?.loading?.tanks?.[1]?.fill).toBeUndefined())
    write(tank, 'Volume in the tank', '90 L')
    expect(within(tank).getByText(/more is in tank 2 than it holds/)).toBeDefined()
    write(tank, 'Volume in the tank', '45 L')
    await waitFor(() => expect(last(asked)?.loading?.tanks?.[1]?.contentsM3).toBeCloseTo(0.045, 9))
  })

  it('brake forces are kept axle by axle, both wheels together, with the mass as tested', async () => {
    const asked = await open(wholeRig())
    const test = part('Actuator and brake test')
    write(test, 'Axle 1, brake force left', '2.1 kN')
    expect(within(test).getByText(/only one side of axle 1 is given/)).toBeDefined()
    expect(keptRigs(asked)).toEqual([])
    write(test, 'Axle 1, brake force right', '2.3 kN')
    await waitFor(() => expect(last(asked)?.brakeTest).toEqual({ date: today, axles: [{ leftN: 2_100, rightN: 2_300 }] }))
    write(test, 'Mass as tested', '1650 kg')
    write(test, 'Travel of the actuator', '30 mm')
    write(test, 'Full stroke of the actuator', '100 mm')
    await waitFor(() => expect(last(asked)?.brakeTest).toMatchObject({ massKg: 1650, actuatorTravelM: 0.03, actuatorStrokeM: 0.1 }))
    await userEvent.click(within(test).getByRole('button', { name: 'Remove the brake test' }))
    await waitFor(() => expect(last(asked)?.brakeTest).toBeUndefined())
  })

  it('the coupling takes its V-value, the vehicle’s suspension, and the chains', async () => {
    const asked = await open(wholeRig())
    const strength = part('D-value, V-value and chains')
    write(strength, 'Smallest V-value marked', '6 kN')
    write(strength, 'Number of chains', '2.5')
    leave(within(strength).getByRole('textbox', { name: 'Number of chains' }))
    expect(within(strength).getByText(/“2.5” is no whole number. “Number of chains”/)).toBeDefined()
    write(strength, 'Number of chains', '9')
    leave(within(strength).getByRole('textbox', { name: 'Number of chains' }))
    expect(within(strength).getByText(/^At most 4 can be right for “Number of chains”/)).toBeDefined()
    write(strength, 'Number of chains', '1')
    await userEvent.click(within(within(part('Ratings of coupling and tow vehicle')).getByRole('radiogroup', { name: 'Tow vehicle on air suspension' })).getByRole('radio', { name: 'Yes' }))
    await waitFor(() => expect(last(asked)?.couplingRatings).toMatchObject({ vValueN: 6_000, chainCount: 1, towVehicleHasAirSuspension: true }))
  })

  it('a unit that is not known is shown as it was typed', async () => {
    const asked = await open(strapped())
    write(part('Straps'), 'Working load limit on its label', '1200 lbf1')
    leave(within(part('Straps')).getByRole('textbox', { name: 'Working load limit on its label' }))
    expect(within(part('Straps')).getByText('“lbf1” is not a unit known here. Use one of N, kN, daN, lbf.')).toBeDefined()
    write(part('Heights and track'), 'Height of the ball as towed', '1 ft 6')
    await waitFor(() => expect(last(asked)?.stance?.ballHeightM).toBeCloseTo(0.4572, 9))
  })

  it('a folded group says on one line what is entered', async () => {
    openSheet(wholeRig())
    await screen.findByDisplayValue('5 m', {}, { timeout: 40_000 })
    const heights = part('Heights and track')
    expect(within(heights).getByText('5 of 6 known')).toBeDefined()
    expect(within(heights).getByText(/^Height of the ball as towed 0.45 m; Height of the wheel centre 0.33 m/)).toBeDefined()
  })
})
