import { pictureFiles } from '../parts/picture-files'

/** Opens the system's own choice of one picture. Nothing happens when none is chosen. */
export const choosePicture = (onChosen: (file: File) => void): void => {
  const input = document.createElement('input')
  input.type = 'file'
  input.accept = pictureFiles
  input.addEventListener('change', () => {
    const file = input.files?.[0]
    if (file) onChosen(file)
  })
  input.click()
}
