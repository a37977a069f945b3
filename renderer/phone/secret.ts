/** The pairing secret behind '#', if this page was opened by a code. It is taken out of the address, so that neither history nor a shared link carries it. */
export const takeSecret = (): string | undefined => {
  const secret = window.location.hash.slice(1)
  if (secret === '') return undefined
  window.history.replaceState(null, '', window.location.pathname)
  return secret
}
