/** The sentence for each refusal code: what was wrong, and what would be right. Gaps in braces. */
export const refusals: Readonly<Record<string, string>> = {
  'quantity.empty': 'Nothing was entered. Enter a number with its unit, or mark it as not seen.',
  'quantity.not-a-number': '“{written}” is not a number. Write it like 1.6 mm or 3/8 in.',
  'quantity.unknown-unit': '“{unit}” is not a unit known here. Use one of {known}.',
}
