import type { FieldWords, StationCheckWords } from '../../../check-words'

const fields: Readonly<Record<string, FieldWords>> = {
  read: { label: 'What was read', options: { 'as registered': 'The number entered for this rig', another: 'Another number', 'none found': 'No number found' } },
  number: { label: 'Number as read', hint: 'Spaces and hyphens do not matter.' },
}

export const paperNumberWords: StationCheckWords = {
  'papers.identification-number': {
    title: 'Identification number',
    question: 'Which identification number does the trailer carry?',
    how: 'Read it from the plate or the frame, not from the papers. Seventeen characters; the letters I, O and Q are never used.',
    criterion: 'Seventeen characters whose ninth agrees with the check-digit sum, where the trailer was built for North America. Elsewhere no check digit is required. A bad digit is a query: it is most often a misreading.',
    consequence: 'A number that is missing or does not add up was misread, mistyped or is not the true one: identity and title stay in doubt.',
    fields,
    outcomes: {
      valid: { because: '{number}: seventeen characters, and the check digit agrees. This proves neither title nor rating.' },
      'no check digit there': { because: '{number}: seventeen characters. The ninth is {found} where the North American sum gives {expected}; outside North America no check digit is required.' },
      'before 1981': { because: '{number}: {length} characters; the trailer was built before seventeen were asked.' },
      'year differs': { because: '{number} adds up, but its tenth character stands for model year {first} or {second}; the trailer is entered as built in {built}.', remedy: 'Ask for the papers of first sale and clear up the year.' },
      'all the same': { because: '{number}: seventeen equal characters add up by accident; it is not a true number.', remedy: 'Read the plate again and enter the number as stamped.' },
      'bad digit': { because: '{number}: the check digit should be {expected}, not {found}. One character is probably misread.', remedy: 'Read the number again on plate and frame; if it stays, ask the maker or the authority.' },
      'bad digit, market unknown': { because: '{number}: query. If the trailer was built for North America the check digit should be {expected}, not {found}; for another market no check digit is required.', remedy: 'Find out for which market it was built, and read the number again.' },
      'bad character': { because: '{number}: {character} in place {place} is never used in an identification number.', remedy: 'Read that character again: I is 1, O and Q are 0.' },
      'not 17': { because: '{number}: {length} characters, not seventeen.', remedy: 'Read the number again; a home-built trailer needs a number assigned by the authority.' },
      'none found': { because: 'No identification number was found on the trailer.', remedy: 'Have the authority assign or confirm a number before the next trip.' },
      'not entered': { because: 'No identification number is entered for this rig; nothing could be checked.' },
    },
  },
  'papers.hull-number': {
    title: 'Hull identification number',
    question: 'Which hull identification number does the boat carry?',
    how: 'Read it on the starboard side of the transom, high up; a second one is hidden inside. Look for filler or fresh gelcoat round it.',
    criterion: {
      us: 'Twelve characters: three of the maker, five of the serial (no I, O, Q), month and year, model year.',
      eu: 'Fourteen characters with the country first (from memory), or the twelve of the United States for boats built for it.',
    },
    consequence: 'A hull number that is missing, altered or malformed puts title and insurance in doubt.',
    fields,
    outcomes: {
      valid: { because: 'Maker {maker}, serial {serial}, month {month} of {year}, model year {modelYear}.' },
      'older form': { because: 'Older form: maker {maker}, serial {serial}, model year {modelYear}, calendar month {month}.' },
      international: { because: '{number}: the international form, country {country}; it is not decoded here.' },
      'year differs': { because: 'The hull number stands for model year {modelYear}; the boat is entered as built in {built}.', remedy: 'Clear up the year with the papers or the builder.' },
      'bad length': { because: '{number}: {length} characters; twelve are asked, or fourteen in the international form.', remedy: 'Read it again on the transom and at the second, hidden place.' },
      'bad maker': { because: '{number}: the first three characters are not three letters.', remedy: 'Read the first three characters again.' },
      'bad serial': { because: '{number}: the letter {character} is not used in a serial.', remedy: 'Read that character again: I is 1, O and Q are 0.' },
      'bad month': { because: '{number}: {character} is not a month letter A to L.', remedy: 'Read the ninth character again.' },
      'bad year': { because: '{number}: the last three characters are not the digits of a year.', remedy: 'Read the last three characters again.' },
      'none found': { because: 'No hull identification number was found.', remedy: 'Look inside for the second number; ask the builder or the authority.' },
      'not entered': { because: 'No hull identification number is entered for this rig; nothing could be checked.' },
    },
  },
}
