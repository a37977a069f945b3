import type { ReactNode } from 'react'
import { Dialog, Heading, Modal, ModalOverlay } from 'react-aria-components'
import { classNames } from './class-names'
import style from './sheet.module.css'

interface SheetProps {
  readonly title: string
  readonly children: ReactNode
  /** The buttons at the foot, the safe one first. */
  readonly actions: ReactNode
  /** Told when Escape is struck; the sheet stays until its owner takes it away. */
  readonly onClose: () => void
  /** Over the whole window. */
  readonly isWhole?: boolean
}

/** A large sheet laid over the screen for work that takes a while; its foot stays in sight. A tap beside it does not close it. */
export const Sheet = ({ title, children, actions, onClose, isWhole = false }: SheetProps) => (
  <ModalOverlay isOpen onOpenChange={(open) => { if (!open) onClose() }} className={classNames(style.veil, isWhole && style.wholeVeil)}>
    <Modal className={classNames(style.modal, isWhole && style.whole)}>
      <Dialog className={style.sheet ?? ''}>
        <Heading slot="title" level={2} className={style.title ?? ''}>{title}</Heading>
        <div className={style.body}>{children}</div>
        <div className={style.actions}>{actions}</div>
      </Dialog>
    </Modal>
  </ModalOverlay>
)
