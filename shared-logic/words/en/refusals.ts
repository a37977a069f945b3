/** The sentence for each refusal code: what was wrong, and what would be right. Gaps in braces. */
export const refusals: Readonly<Record<string, string>> = {
  'photograph.damaged': '“{name}” breaks off or is damaged, so it was not taken. Copy it from the camera again.',
  'photograph.disk-full': '“{name}” was not taken: the disk is full. Free some space and add it again.',
  'photograph.empty': '“{name}” is empty: there is no picture in it. Copy it from the camera again.',
  'photograph.heic': '“{name}” is a HEIC picture, which cannot be read here yet. Send it as JPEG: set the camera to “most compatible”, or export it.',
  'photograph.not-a-photograph': '“{name}” is not a photograph that can be read here. Use JPEG, PNG, WebP, TIFF or AVIF.',
  'photograph.read-only': '“{name}” was not taken: the yard’s folder cannot be written to. Allow writing there, or open the yard from another folder.',
  'photograph.too-large': '“{name}” is larger than {megabytes} MB. Export it smaller, or as JPEG.',
  'photograph.too-many-pixels': '“{name}” has more than {megapixels} million pixels. Export it smaller.',
  'quantity.empty': 'Nothing was entered. Enter a number with its unit, or mark it as not seen.',
  'quantity.not-a-number': '“{written}” is not a number. Write it like 1.6 mm or 3/8 in.',
  'quantity.unknown-unit': '“{unit}” is not a unit known here. Use one of {known}.',
}
