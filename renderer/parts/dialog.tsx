import type { ReactNode } from 'react'
import { Dialog as AriaDialog, Heading, Modal, ModalOverlay } from 'react-aria-components'
import { Button } from './button'
import { classNames } from './class-names'
import style from './dialog.module.css'
import { useWords } from './use-words'

interface DialogProps {
  readonly title: string
  readonly isOpen: boolean
  readonly onClose: () => void
  readonly children: ReactNode
  /** The buttons, the safe one first. */
  readonly actions?: ReactNode
  /** Asks about something that cannot be taken back: not closed by a tap beside it. */
  readonly isAlert?: boolean
  readonly isWide?: boolean
  /** Its buttons stay in reach at its foot, however long it is. */
  readonly hasFoot?: boolean
}

/** What floats above the screen and wants an answer. Escape closes it; the focus goes back where it was. */
export const Dialog = ({ title, isOpen, onClose, children, actions, isAlert = false, isWide = false, hasFoot = false }: DialogProps) => (
  <ModalOverlay isOpen={isOpen} onOpenChange={(open) => { if (!open) onClose() }} isDismissable={!isAlert} className={style.veil ?? ''}>
    <Modal className={classNames(style.modal, isWide && style.wide)}>
      <AriaDialog role={isAlert ? 'alertdialog' : 'dialog'} className={classNames(style.dialog, hasFoot && style.footed)}>
        <Heading slot="title" level={2} className={style.title ?? ''}>{title}</Heading>
        {hasFoot ? <div className={style.content}>{children}</div> : children}
        {actions !== undefined && <div className={style.actions}>{actions}</div>}
      </AriaDialog>
    </Modal>
  </ModalOverlay>
)

interface ConfirmDialogProps {
  readonly title: string
  readonly isOpen: boolean
  readonly children: ReactNode
  readonly confirmLabel: string
  readonly cancelLabel?: string
  readonly onConfirm: () => void
  readonly onCancel: () => void
  readonly isPending?: boolean
}

/** Asks before something is removed or thrown away. */
export const ConfirmDialog = ({ title, isOpen, children, confirmLabel, cancelLabel, onConfirm, onCancel, isPending = false }: ConfirmDialogProps) => {
  const { cancel } = useWords().screens.shell
  return (
    <Dialog
      title={title} isOpen={isOpen} onClose={onCancel} isAlert
      actions={<><Button onPress={onCancel}>{cancelLabel ?? cancel}</Button><Button kind="danger" onPress={onConfirm} isPending={isPending}>{confirmLabel}</Button></>}
    >
      {children}
    </Dialog>
  )
}
