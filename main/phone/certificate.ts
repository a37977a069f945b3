import { X509Certificate } from 'node:crypto'

export interface Certificate {
  readonly key: string
  readonly cert: string
  /** SHA-256, pairs of hex digits. */
  readonly fingerprint: string
}

const dayMs = 86_400_000

/** A certificate for one address, made on the spot and kept nowhere. Nobody vouches for it: the phone warns, and the fingerprint is to be compared. */
export const makeCertificate = async (address: string, nowMs: number): Promise<Certificate> => {
  const { generate } = await import('selfsigned')
  const { private: key, cert } = await generate([{ name: 'commonName', value: address }], {
    algorithm: 'sha256', keyType: 'ec', curve: 'P-256', notBeforeDate: new Date(nowMs - dayMs), notAfterDate: new Date(nowMs + dayMs),
    extensions: [
      { name: 'basicConstraints', cA: false, critical: true },
      { name: 'keyUsage', digitalSignature: true, critical: true },
      { name: 'extKeyUsage', serverAuth: true },
      { name: 'subjectAltName', altNames: [{ type: 7, ip: address }] },
    ],
  })
  return { key, cert, fingerprint: new X509Certificate(cert).fingerprint256 }
}
