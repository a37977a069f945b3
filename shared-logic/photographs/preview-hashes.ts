/** SHA-256 of the two copies made from an original for screen and report, lower-case hex. */
export interface PreviewHashes {
  readonly large: string
  readonly small: string
}
