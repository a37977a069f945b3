import type { ReactNode } from 'react'
import style from './button.module.css'

interface FileButtonProps {
  readonly kind?: 'main' | 'plain'
  /** Opens the camera rather than the pictures already taken. */
  readonly isCamera?: boolean
  /** Where the words shown are shorter than what it does. */
  readonly label?: string
  readonly onFiles: (files: readonly File[]) => void
  readonly children: ReactNode
}

/**
 * A file input that looks like a button. The input itself is what is tapped and focused: no script stands between the
 * thumb and the camera. It is never taken away while the camera is open, or the picture would be lost.
 */
export const FileButton = ({ kind = 'plain', isCamera = false, label, onFiles, children }: FileButtonProps) => (
  <label className={kind === 'main' ? style.main : style.plain}>
    <input
      type="file" accept="image/*" className="visually-hidden" {...(isCamera ? { capture: 'environment' } : { multiple: true })} {...(label !== undefined && { 'aria-label': label })}
      onChange={(event) => {
        const files = [...(event.currentTarget.files ?? [])]
        // The same picture may be chosen again, and a second shot may bear the first one's name.
        event.currentTarget.value = ''
        if (files.length > 0) onFiles(files)
      }}
    />
    {children}
  </label>
)
