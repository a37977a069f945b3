import { useEffect, useRef, useState, type DragEvent, type ReactNode } from 'react'
import { useWords } from '../parts/use-words'
import style from './photographs.module.css'

interface PhotographDropProps {
  readonly onFiles: (files: readonly File[]) => void
  /** Said while pictures are held over it; of the open check where nothing else is said. */
  readonly dropNow?: string
  readonly children: ReactNode
}

const carriesFiles = (event: DragEvent): boolean => event.dataTransfer.types.includes('Files')

/** The open check, or a whole page, as a place to drop photographs on or to paste them at. What lies within sees nothing of files. */
export const PhotographDrop = ({ onFiles, dropNow, children }: PhotographDropProps) => {
  const { photographs } = useWords().screens.survey
  const [isOver, setOver] = useState(false)
  usePastedFiles(onFiles)
  return (
    <div
      className={style.drop} data-over={isOver}
      onDragOverCapture={(event) => { if (carriesFiles(event)) { event.preventDefault(); event.stopPropagation(); setOver(true) } }}
      onDragLeave={(event) => { if (!(event.relatedTarget instanceof Node) || !event.currentTarget.contains(event.relatedTarget)) setOver(false) }}
      onDropCapture={(event) => { if (carriesFiles(event)) { event.preventDefault(); event.stopPropagation(); setOver(false); onFiles([...event.dataTransfer.files]) } }}
    >
      {children}
      {isOver && <p className={style.over} aria-hidden="true">{dropNow ?? photographs.dropNow}</p>}
    </div>
  )
}

/** Files on the clipboard go to the open check wherever the focus stands; pasted words stay where they are typed. */
const usePastedFiles = (onFiles: (files: readonly File[]) => void): void => {
  const latest = useRef(onFiles)
  useEffect(() => {
    latest.current = onFiles
  })
  useEffect(() => {
    const paste = (event: ClipboardEvent): void => {
      const files = [...(event.clipboardData?.files ?? [])]
      if (files.length === 0) return
      event.preventDefault()
      latest.current(files)
    }
    document.addEventListener('paste', paste)
    return () => document.removeEventListener('paste', paste)
  }, [])
}
