/** Hands a picture to the phone's own storage, where the person finds it again: it may be the only copy there is. */
export const saveOnPhone = async (read: () => Promise<Blob | undefined>, fileName: string): Promise<void> => {
  const file = await read()
  if (file === undefined) return
  const address = URL.createObjectURL(file)
  const link = document.createElement('a')
  link.href = address
  link.download = fileName
  link.click()
  setTimeout(() => URL.revokeObjectURL(address), 60_000)
}
