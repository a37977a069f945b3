/**
 * Cautions a report carries, by the ids of `shared-logic/report/cautions`. Common practice, no source, unless the
 * sentence names one. They defer to local law, the makers' plates and manuals, and licensed practice.
 */
export const reportCautions = {
  'do not tow': 'Do not tow this rig before the findings marked “Before it is towed” are put right. They can hurt people. A fail with a later date is still a fail: this report does not clear the rig for the drive home.',
  'this day and place': 'This report tells the condition on the date and in the place of the survey. Parts hidden, submerged, wrapped or not opened were not seen; what was asked and not seen is listed by itself and is never counted as a pass.',
  'plate decides': 'The rating plate decides. A computed figure never raises a rating.',
  'plate missing': 'No maximum mass was recorded from a rating plate: what depends on it is not determined, and it is not guessed. The rating plate decides; a computed figure never raises a rating.',
  'masses': 'Masses stand as the papers, the plate or the owner gave them unless a weighing is named beside them. An estimate is not a rating.',
  'balance changes': 'Load at the coupling and balance change with fuel, water, gear and how the boat sits. Weigh again after a change.',
  'limits quoted': 'The limits used are listed with their source. They belong to the rule book named on the first page; commercial federal rules are quoted as a benchmark only. Local law prevails.',
  'straps': 'Tie-down is judged on the assumption of sound anchor points and of straps that are untwisted and tight. Look at them again after the first few miles or kilometres, and at each stop.',
  'tyre age': 'Tyre age comes from the moulded date code, not from use. Where the code could not be read the age is not determined.',
  'brakes at rest': 'Brakes were judged standing still unless a road or roller test is named with the check.',
  'numbers prove little': 'An identification number that passes its check digit proves neither title nor rating. Outside North America a check digit that does not agree is not a defect.',
  'outside the report': 'Hull, engine and value are outside this report unless a check of them is listed.',
  'not a certificate': 'This is not a statutory test certificate.',
  'each axle weighed': 'Where axles are not joined by an equalizer each axle has to be weighed; a computed split of the load between them does not hold.',
  'inside not seen': 'The inside of box sections and tubes was not seen. Loss of metal there adds to what was found outside.',
  'covered not seen': 'Metal under and behind bunks, carpet, rollers, brackets, U-bolts and fenders, and where the boat lies on the trailer, was not seen.',
  'blocked drains': 'Where drain holes are blocked, or water or mud is heard or found inside, the section is likely to be corroded from within.',
  'paint hides': 'Fresh paint, filler and underbody coating hide what is beneath them.',
  'rust at joints': 'Rust bleeding from a joint means corrosion between the plates. A stain that brushes off is not corrosion of the surface.',
  'light and wet': 'Wet, dirt, low sun, shadow and flash glare shift colours, in the photographs as to the eye.',
  'area not depth': 'A share of area says nothing about depth. Depth is stated only where it was measured, with the instrument named.',
  'coating through paint': 'A magnetic gauge reads paint and dirt as zinc; on aluminium an eddy-current gauge is needed. From memory of ISO 2178 and ISO 2360, not confirmed.',
  'grade of what was seen': 'A grade by area holds for the visible part of a face only.',
  'visual and one day': 'The survey of corrosion is visual: nothing was dismantled and nothing was loaded for test.',
}
