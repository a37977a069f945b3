import { useState } from 'react'
import { spotSchema, type Spot } from '../../shared-logic/survey/spot'
import { Button } from '../parts/button'
import { Dialog } from '../parts/dialog'
import { QuantityField } from '../parts/quantity-field'
import { SelectField } from '../parts/select-field'
import { TextField } from '../parts/text-field'
import { useWords } from '../parts/use-words'
import style from './spots.module.css'

interface SpotDialogProps {
  readonly spot: Spot | undefined
  readonly onKeep: (spot: Spot) => void
  readonly onClose: () => void
}

const blank = (): Spot => ({ id: crypto.randomUUID(), place: '', material: 'galvanized steel', kind: 'red rust' })
const materials = spotSchema.shape.material.options
const kinds = spotSchema.shape.kind.options

const above = (part: number | undefined, whole: number | undefined): boolean => part !== undefined && whole !== undefined && part > whole

/** One corroded spot: where, on what, what kind, how large, how deep. Only the place is asked for; sizes make the grading sharper. */
export const SpotDialog = ({ spot: given, onKeep, onClose }: SpotDialogProps) => {
  const said = useWords().screens.survey.spots
  const [spot, setSpot] = useState<Spot>(() => given ?? blank())
  const [unread, setUnread] = useState<ReadonlySet<string>>(new Set())
  const [isTried, setTried] = useState(false)
  const set = (change: Partial<Spot>): void => setSpot((before) => ({ ...before, ...change }))
  const measure = (field: 'areaM2' | 'faceAreaM2' | 'pitDepthM' | 'wallM') => (si: number | undefined, problem?: string): void => {
    set({ [field]: si })
    setUnread((before) => new Set(problem === undefined ? [...before].filter((each) => each !== field) : [...before, field]))
  }
  const areaOver = above(spot.areaM2, spot.faceAreaM2) ? said.areaOverFace : undefined
  const pitOver = above(spot.pitDepthM, spot.wallM) ? said.pitOverWall : undefined
  const keep = (): void => {
    setTried(true)
    const read = spotSchema.safeParse({ ...spot, place: spot.place.trim() })
    if (read.success && unread.size === 0 && areaOver === undefined && pitOver === undefined) onKeep(read.data)
  }
  return (
    <Dialog title={said.titleNew} isOpen onClose={onClose} actions={<><Button onPress={onClose}>{said.cancel}</Button><Button kind="primary" onPress={keep}>{said.keep}</Button></>}>
      <TextField label={said.place} hint={said.placeHint} value={spot.place} maxLength={120} onChange={(place) => set({ place })} error={isTried && spot.place.trim() === '' ? said.needPlace : undefined} />
      <div className={style.pair}>
        <SelectField label={said.kind} value={spot.kind} onChange={(kind) => set({ kind })} options={kinds.map((kind) => ({ value: kind, label: said.kinds[kind] }))} />
        <SelectField label={said.material} value={spot.material} onChange={(material) => set({ material })} options={materials.map((material) => ({ value: material, label: said.materials[material] }))} />
        <QuantityField label={said.area} quantity="area" value={spot.areaM2} onChange={measure('areaM2')} error={areaOver} />
        <QuantityField label={said.faceArea} quantity="area" value={spot.faceAreaM2} onChange={measure('faceAreaM2')} />
        <QuantityField label={said.pitDepth} quantity="smallLength" value={spot.pitDepthM} onChange={measure('pitDepthM')} error={pitOver} />
        <QuantityField label={said.wall} quantity="smallLength" value={spot.wallM} onChange={measure('wallM')} />
      </div>
    </Dialog>
  )
}
