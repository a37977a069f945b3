/**
 * How wide the letters of the house face run in its bold, in hundredths of the size they are set in.
 * Source: the face's own table of advances (assets/fonts/AtkinsonHyperlegibleNext-Bold.ttf); a test reads it again.
 */
const rows: readonly (readonly [number, string])[] = [
  [21, '\''], [25, '|¦'], [26, 'j'], [27, ',.:;‘’'], [28, '¹'], [29, '`´·'], [30, '!i¡¸ìíîīįı'], [31, ' ï'], [32, 'lĺļ'], [34, '()[]'], [35, 'ł'],
  [37, '-fľ'], [38, 'rt{}¯ŕřţť'], [39, '"ª°'], [40, '_²º'], [41, '³'], [42, 'IÌÍÎÏĪĮİ'], [43, '¨'], [44, '/1\\'], [48, '“”'], [49, '*'], [50, '–'],
  [51, 'csz¢çćċčśşšźżž'], [52, 'y¶ýÿŷ'], [53, 'v¿'], [54, '7x~×'], [55, '?LaàáâãäåāăąĹĻĽ'], [56, 'Jek§èéêëēėęěĳķ'], [57, '9<>Fhnuñùúûüħńņňūůűų'],
  [58, '2^oòóôõöøŁő'], [59, 'g¤ðğġģ'], [60, '+3EbdpqÈÉÊË÷þđĒĖĘĚ'], [61, '$5=ST±ŚŞŠŢŤ'], [62, '48Z¬ßŹŻŽ'], [63, '6P£Þ'], [64, 'BV'], [65, 'RY¥«»ÝŔŘŶŸ'],
  [66, '0CKÇĆĊČĶ'], [68, 'AÀÁÂÃÄÅĀĂĄ€'], [69, 'DUXÙÚÛÜĎďŪŮŰŲ'], [70, 'HĦ'], [71, 'ÐĐ'], [72, 'GNÑĞĠĢŃŅŇ'], [73, '&'], [74, 'wŵ'], [75, 'OÒÓÔÕÖØŐ'],
  [76, 'Q'], [77, '#'], [78, '@…'], [80, '©®'], [83, '—'], [85, '¼½'], [86, 'M'], [88, 'mæ'], [89, 'WŴ'], [92, '¾'], [94, 'œ'], [97, '%Æ'], [99, 'Ĳ'],
  [102, 'Œ'],
]

const graphemes = new Intl.Segmenter('en', { granularity: 'grapheme' })

/** What a reader takes for one letter each. */
export const lettersOf = (text: string): string[] => Array.from(graphemes.segment(text.normalize('NFC')), ({ segment }) => segment)

const widths: ReadonlyMap<string, number> = new Map(rows.flatMap(([width, letters]) => lettersOf(letters).map((letter) => [letter, width / 100] as const)))

/** A letter the face does not have is set in a wider one. */
const unknown = 0.9

/** Width of a line, in sizes it is set in. */
export const lineWidth = (text: string): number => lettersOf(text).reduce((sum, letter) => sum + (widths.get(letter) ?? unknown), 0)
