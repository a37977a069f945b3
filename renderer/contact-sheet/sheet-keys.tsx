import { Button } from '../parts/button'
import { Dialog } from '../parts/dialog'
import { useWords } from '../parts/use-words'
import style from '../survey/key-map.module.css'

/** The keys of the contact sheet. */
export const SheetKeys = ({ isOpen, onClose }: { readonly isOpen: boolean; readonly onClose: () => void }) => {
  const { keys } = useWords().screens.contactSheet
  return (
    <Dialog title={keys.title} isOpen={isOpen} onClose={onClose} actions={<Button onPress={onClose}>{keys.close}</Button>}>
      <p>{keys.hint}</p>
      <dl className={style.keys}>
        {keys.list.map((row) => <div key={row.keys} className={style.row}><dt><kbd>{row.keys}</kbd></dt><dd>{row.does}</dd></div>)}
      </dl>
    </Dialog>
  )
}
