import { Button } from '../parts/button'
import { Dialog } from '../parts/dialog'
import { Switch } from '../parts/switch'
import { useWords } from '../parts/use-words'
import style from './key-map.module.css'

interface KeyMapProps {
  readonly isOpen: boolean
  readonly onClose: () => void
  readonly isOn: boolean
  readonly onTurn: (isOn: boolean) => void
}

/** The keys of the walk, and the switch that turns them off. */
export const KeyMap = ({ isOpen, onClose, isOn, onTurn }: KeyMapProps) => {
  const { keys } = useWords().screens.survey
  return (
    <Dialog title={keys.title} isOpen={isOpen} onClose={onClose} actions={<Button onPress={onClose}>{keys.close}</Button>}>
      <dl className={style.keys}>
        {keys.list.map((row) => (
          <div key={row.keys} className={style.row}>
            <dt><kbd>{row.keys}</kbd></dt>
            <dd>{row.does}</dd>
          </div>
        ))}
      </dl>
      <div>
        <Switch label={keys.single} isOn={isOn} onChange={onTurn} />
        <p className={style.hint}>{keys.singleHint}</p>
      </div>
    </Dialog>
  )
}
