import { Button } from './button'
import { Dialog } from './dialog'
import style from './keys-dialog.module.css'
import { Switch } from './switch'
import { useWords } from './use-words'

interface KeysDialogProps {
  readonly keys: {
    readonly title: string
    /** When they work. */
    readonly hint?: string
    readonly close: string
    readonly list: readonly { readonly keys: string; readonly does: string }[]
  }
  readonly isOpen: boolean
  readonly onClose: () => void
  readonly isOn: boolean
  readonly onTurn: (isOn: boolean) => void
}

/** The keys of a screen, and the switch that turns its single ones off. */
export const KeysDialog = ({ keys, isOpen, onClose, isOn, onTurn }: KeysDialogProps) => {
  const { single, singleHint } = useWords().screens.survey.keys
  return (
    <Dialog title={keys.title} isOpen={isOpen} onClose={onClose} actions={<Button onPress={onClose}>{keys.close}</Button>}>
      {keys.hint !== undefined && <p>{keys.hint}</p>}
      <dl className={style.keys}>
        {keys.list.map((row) => (
          <div key={row.keys} className={style.row}>
            <dt><kbd>{row.keys}</kbd></dt>
            <dd>{row.does}</dd>
          </div>
        ))}
      </dl>
      <div>
        <Switch label={single} isOn={isOn} onChange={onTurn} />
        <p className={style.hint}>{singleHint}</p>
      </div>
    </Dialog>
  )
}
