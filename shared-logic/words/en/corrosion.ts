import type { CoatingCondition } from '../../corrosion/area-grades'
import type { GradingCaution } from '../../corrosion/cautions'
import type { RemedyKind } from '../../corrosion/findings'
import type { NoForecast } from '../../corrosion/forecast'
import type { LifeObserved } from '../../corrosion/life'
import type { TrailStanding } from '../../corrosion/trails'
import type { RustLetter } from '../../corrosion/rust-letter'
import type { spotComponents, touchingMetals } from '../../survey/spot'
import { leastYieldKept, weldedStrength } from '../../corrosion/weld-strength'
import { corrosionFindings } from './corrosion-findings'

const components: Readonly<Record<(typeof spotComponents)[number], string>> = {
  tongue: 'Tongue', rail: 'Rail', 'cross-member': 'Cross-member', 'winch post': 'Winch post', coupler: 'Coupler', axle: 'Axle', 'spring or arm': 'Spring or arm', hanger: 'Hanger', 'bunk bracket': 'Bunk bracket',
  'roller bracket': 'Roller bracket', mudguard: 'Mudguard', 'lamp bracket': 'Lamp bracket', fastener: 'Fastener', wheel: 'Wheel', other: 'Another part',
}

const metals: Readonly<Record<(typeof touchingMetals)[number], string>> = {
  'stainless steel': 'Stainless steel', 'carbon steel': 'Carbon steel', 'galvanized steel': 'Galvanized steel', 'zinc plated': 'Zinc plated', aluminium: 'Aluminium', 'brass or bronze': 'Brass or bronze', copper: 'Copper', lead: 'Lead',
  'nickel alloy': 'Nickel alloy', magnesium: 'Magnesium',
}

const remedies: Readonly<Record<RemedyKind, string>> = {
  none: 'Nothing', measure: 'Measure', 'clean and watch': 'Clean and watch', 'clean and coat': 'Clean and coat', 'repair the zinc': 'Clean and cold galvanize', 'coat the whole member': 'Coat the whole member',
  isolate: 'Isolate the fastener', 'repair by welding': 'Repair by a qualified welder, or renew', replace: 'Replace',
}

/** '6061-T6 keeps 45 % of its yield strength', alloy by alloy. */
const weldedAlloys = [...new Set(weldedStrength.map(({ alloy }) => alloy))].map((alloy) => `${alloy} keeps ${Math.round((leastYieldKept(alloy) ?? 0) * 100)} % of its yield strength`).join(', ')

const cautions: Readonly<Record<GradingCaution, string>> = {
  'worst end counts': 'The measurement straddles an edge: the worse grade counts.',
  'seen part alone': 'The share is of the part that could be seen. What is hidden may be better or worse.',
  'stain is no rust': 'Run-off stain is not rust, and dirt can look like it: brush before grading.',
  'edges apart': 'ISO 4628-3 leaves edges out; edges and welds are graded apart.',
  'uncoated steel': 'For uncoated steel ISO 4628-3 itself refers to the rust grades of ISO 8501-1; the degree is a help for comparing.',
  'used part': 'Zinc thickness and repair limits are written for new parts leaving the works. For a used trailer they are a yardstick.',
  'paint in the reading': 'The gauge reads paint and zinc together: the readings say nothing of the zinc alone.',
  'inside not seen': 'The inside of closed sections is not seen. Loss there adds to the loss outside.',
  'five deepest pits': 'More than 15 % of the face is pitted: clean a circle of 300 mm and measure the five deepest pits.',
  'weld zone': `Beside a weld aluminium is weaker: ${weldedAlloys}. The zone is about 25 mm wide (from memory).`,
  'remembered index': 'The figure for hot-dip galvanized steel is from memory; it decides no fail.',
  'no published limit': 'No published limit for loss of section in light trailer frames is known; 10 % and 25 % are practice, 30 % in a pit is borrowed from ship rules. Makers’ limits and local law come first.',
  'component not named': 'The part is not named, so it counts as bearing load.',
}

const standings: Readonly<Record<TrailStanding, string>> = {
  new: 'New since the last survey', 'first record': 'First record of this place', 'come back': 'Come back after a repair', grown: 'Grown', same: 'No change that could be measured', smaller: 'Measured smaller than before',
  'not comparable': 'Cannot be compared: not measured both times', healed: 'Repaired and sound', 'not looked at again': 'Not looked at again',
}

const noForecast: Readonly<Record<NoForecast, string>> = {
  'one survey': 'No date can be told from one survey.', repaired: 'It is repaired.', 'not measured': 'No date can be told: the share of the face was not measured at both ends.',
  'no area scale': 'No date is told: there is no grade by area to reach.', 'last grade': 'It has reached the last grade.', 'growth not certain': 'No date is told: the growth lies within the uncertainty of the measurements.',
  'not within fifty years': 'At this rate the next grade is more than fifty years away.',
}

const doubts: Readonly<Record<NonNullable<LifeObserved['doubt']>, string>> = {
  'less than a year apart': 'the surveys are less than a year apart', 'loss within the error of the gauge': 'the loss lies within the error of the gauge ({gauge})',
}

const conditions: Readonly<Record<CoatingCondition, string>> = { good: 'good', fair: 'fair', poor: 'poor' }
const letters: Readonly<Record<RustLetter, string>> = { S: 'spot: most of it in a few places', G: 'general: spots of many sizes', P: 'pinpoint: specks spread out' }

/** What is said of corroded spots: grades, life and course over the surveys. */
export const corrosionWords = {
  findings: corrosionFindings,
  components, metals, remedies, cautions, standings, noForecast, doubts, conditions, letters,
  grade: {
    about: '{component} · {material} · {kind}',
    repaired: 'Repaired, and sound.',
    area: 'Area {area}.',
    areaWithin: 'Area {area}, between {low} and {high}.',
    share: '{share} of the face.',
    shareWithin: '{share} of the face, between {low} and {high}.',
    together: '{share} of the face, {count} spots of this place together.',
    togetherWithin: '{share} of the face, between {low} and {high}, {count} spots of this place together.',
    shareUnknown: 'The share of the face is not known.',
    degree: 'ISO 4628-3: degree of rusting Ri {degree}, the smallest whose nominal area is not below the measurement.',
    nearest: 'ISO 4628-3: degree of rusting Ri {degree}, the smallest whose nominal area is not below the measurement; the nearest would be Ri {nearest}.',
    rustGrade: 'ASTM D610: rust grade {grade}.',
    rustGradeLettered: 'ASTM D610: rust grade {grade}-{letter} ({meaning}).',
    rating: 'ISO 10289: protection rating Rp {rating} by the table; {formula} by the formula.',
    ratingWhole: 'ISO 10289: protection rating Rp {rating}.',
    appearance: 'ISO 10289: appearance rating RA {rating} C (corrosion product of the coating); the steel is not attacked.',
    condition: 'Edges and welds, by the ships’ rule IMO MSC.1/Circ.1330: {condition}.',
    zinc: 'Zinc: {count} readings, lowest {lowest}, mean {mean} (about {mass} by the rule of ISO 1461).',
    zincOne: 'Zinc: one reading, {lowest} (about {mass} by the rule of ISO 1461).',
    minimum: 'New steel of {wall} has at least {local} anywhere and {meanLeast} in the mean (ISO 1461): {kept}. ASTM A123: a mean of {tube} for a tube, {shape} for a shape.',
    kept: { both: 'both kept', mean: 'the mean is missed, which is less reserve, not a defect', lowest: 'the lowest reading is below it', neither: 'neither is kept' },
    bare: 'Bare spots: the largest {largest} ({across} across), together {total}. {iso} {a123}',
    bareIso: { kept: 'ISO 1461, 6.3: a galvanizer might still mend them on new work ({single} a spot, together {limit}).', broken: 'ISO 1461, 6.3: past what a galvanizer may mend on new work ({single} a spot, together {limit}).' },
    bareA123: { kept: 'ASTM A123: within its limits too ({narrowest} across, together {limit}).', broken: 'ASTM A123: past its limits ({narrowest} across, together {limit}).' },
    coating: 'Coating: {because}',
    structure: 'Metal: {because}',
    pitLoss: 'Deepest pit {depth}, {loss} of the wall of {wall}; {left} is left.',
    generalLoss: '{left} left of {wall}: {loss} lost over an area.',
    pits: { metric: 'About {count} pits to the dm².', us: 'About {count} pits to the square foot.' },
    section: 'Of the whole section {area} of the area and {modulus} of the bending strength are lost; with as much lost inside, unseen, {areaBoth} and {modulusBoth}.',
    sectionWithin: 'Ship rules, by analogy, allow a whole section to lose 10 %: this keeps within.',
    sectionBeyond: 'Ship rules, by analogy, allow a whole section to lose 10 %: this goes beyond.',
    couple: 'The other metal: {metal}, {difference} apart; up to {limit} is usually accepted outdoors. {anode}',
    seawater: 'In sea water {gap} was measured between the two.',
    anode: { member: 'This member is the one that is eaten.', 'other part': 'The other part is the one that is eaten.', neither: 'The two are alike.' },
    ratio: { smaller: 'The other part is the smaller one: the attack is slow and stays near it.', larger: 'The other part is the larger one: the attack is fast.' },
    also: 'Also: {because} {remedy}',
    remedy: 'What to do: {remedy}',
    unrated: 'not rated',
  },
  life: {
    title: 'Life left in the zinc',
    noZinc: 'No zinc that a gauge reads by itself on {material}: no life is told.',
    waits: 'Life left waits for: {fields}.',
    lowest: 'Lowest reading {lowest}.',
    table: 'By the place ({classes}, ISO 9223): about {years} of zinc left; loss slows with age in air (ISO 9224), {age} years old.',
    tableEven: 'By the place ({classes}, ISO 9223): about {years} of zinc left; no slowing is credited where salt water wets and dries it.',
    oneClass: 'class {worst}',
    classRange: 'class {mildest} to {worst}',
    tableWaits: 'By the place: waits for {fields}.',
    observed: 'Measured from {from} to {to}: {loss} lost, {rate} a year, as in class {asIn}: about {years} left, {reserve} until {keep} is left.',
    observedBeyond: 'Measured from {from} to {to}: {loss} lost, {rate} a year, worse than any class of the table: about {years} left, {reserve} until {keep} is left.',
    observedNone: 'Measured from {from} to {to}: no loss beyond the error of the gauge.',
    believedRate: 'The measured rate is believed: {span} apart, and more was lost than the gauge errs by. It knows this trailer; the table knows only the kind of place.',
    believedTable: 'The table is believed: {doubt}.',
    believedTableAlone: 'Only the table can be used until a second survey measures the same place.',
    cautions: {
      assumed: 'The class is chosen by where the trailer is kept and used; the true loss may lie about a class away, and on warm, salty coasts worse than the table.',
      immersed: 'The rates are of air: they do not hold while it lies in water.',
      lowest: 'Told from the lowest reading. Brownish zinc-iron layers show before the steel rusts.',
      reading: 'Gauge readings include dirt and paint.',
    },
    range: '{least} to {most} years',
    oneFigure: '{most} years',
    long: 'more than {most} years',
  },
  trail: {
    standing: '{standing}.',
    standingSince: '{standing} since {date}.',
    point: '{date}: {measures}.',
    measures: { area: '{area} ± {uncertainty}', areaAssumed: '{area} (± 20 % assumed)', pit: 'pit {depth}', wall: '{left} left of {wall}', zinc: 'zinc {lowest} at least', repaired: 'repaired', none: 'not measured' },
    area: 'Change of area: {by} ± {uncertainty}.',
    pitDepth: 'Change of the deepest pit: {by} ± {uncertainty}.',
    wallLoss: 'Change of the loss of wall: {by} ± {uncertainty}.',
    forecast: 'The next grade ({scale}, above {edge} of the face) is reached between {earliest} and {latest}.',
    forecastOpen: 'The next grade ({scale}, above {edge} of the face) is reached after {earliest}; the latest day cannot be told.',
    forecastNow: 'The next grade ({scale}, above {edge} of the face) may be reached already, by {latest} at the latest.',
    forecastNowOpen: 'The next grade ({scale}, above {edge} of the face) may be reached already.',
    basis: 'Told from growth by the same area each year and by the same part of itself each year, with the uncertainty of both measurements.',
  },
} as const

/** Labels of a spot's measures, for refusals and waiting lines. */
const measures: Readonly<Record<string, string>> = {
  areaM2: 'Area of the spot', areaUncertaintyM2: 'Uncertainty of the area', faceAreaM2: 'Area of the face it lies on', share: 'Corroded share of the face', pitDepthM: 'Depth of the deepest pit', wallM: 'Wall thickness there',
  remainingM: 'Wall left', pitCount: 'Pits counted', coatingReadingsM: 'Coating readings', material: 'Material', component: 'Part', kind: 'What it is', place: 'Place', id: 'Name of the spot',
}

export const corrosionFieldLabels: Readonly<Record<string, string>> = Object.fromEntries(['spot', 'spots'].flatMap((list) => Object.entries(measures).map(([field, label]) => [`${list}.${field}`, label])))
