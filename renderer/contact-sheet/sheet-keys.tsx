import { Button } from '../parts/button'
import { Dialog } from '../parts/dialog'
import { Switch } from '../parts/switch'
import { useWords } from '../parts/use-words'
import style from '../survey/key-map.module.css'

interface SheetKeysProps {
  readonly isOpen: boolean
  readonly onClose: () => void
  readonly isOn: boolean
  readonly onTurn: (isOn: boolean) => void
}

/** The keys of the contact sheet, and the switch that turns its letters off. */
export const SheetKeys = ({ isOpen, onClose, isOn, onTurn }: SheetKeysProps) => {
  const { contactSheet: { keys }, survey: { keys: ofWalk } } = useWords().screens
  return (
    <Dialog title={keys.title} isOpen={isOpen} onClose={onClose} actions={<Button onPress={onClose}>{keys.close}</Button>}>
      <p>{keys.hint}</p>
      <dl className={style.keys}>
        {keys.list.map((row) => <div key={row.keys} className={style.row}><dt><kbd>{row.keys}</kbd></dt><dd>{row.does}</dd></div>)}
      </dl>
      <div>
        <Switch label={ofWalk.single} isOn={isOn} onChange={onTurn} />
        <p className={style.hint}>{ofWalk.singleHint}</p>
      </div>
    </Dialog>
  )
}
