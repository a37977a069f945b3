const edgePx = 160

/** A small JPEG copy to show. Undefined where this browser cannot read the picture: it is sent all the same. */
export const smallPicture = async (file: Blob): Promise<Blob | undefined> => {
  if (!('createImageBitmap' in window)) return undefined
  const bitmap = await createImageBitmap(file, { resizeWidth: edgePx, resizeQuality: 'medium' })
  const canvas = document.createElement('canvas')
  canvas.width = bitmap.width
  canvas.height = bitmap.height
  canvas.getContext('2d')?.drawImage(bitmap, 0, 0)
  bitmap.close()
  return new Promise((resolve) => { canvas.toBlob((blob) => resolve(blob ?? undefined), 'image/jpeg', 0.7) })
}
