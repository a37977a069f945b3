/** The trade's own words: verdicts, stations, purposes, by-whens, rule books. */
export const trade = {
  verdicts: { pass: 'Pass', advisory: 'Advisory', fail: 'Fail', 'not seen': 'Not seen', 'not applicable': 'Not applicable' },
  stations: {
    papers: 'Papers and plates',
    coupler: 'Coupler and chains',
    winch: 'Winch post',
    frame: 'Frame',
    bunks: 'Bunks and rollers',
    axles: 'Axles and suspension',
    hubs: 'Hubs',
    wheels: 'Wheels and tyres',
    brakes: 'Brakes',
    lights: 'Lights and wiring',
    'tie-down': 'Tie-down',
    'after-use': 'After-use care',
  },
  purposes: {
    purchase: 'Before a purchase',
    'hire out': 'Going out on hire',
    'hire in': 'Back from hire',
    sale: 'Before a sale',
    yearly: 'Yearly survey',
    'before tow': 'Before a tow',
  },
  byWhens: {
    'before it is towed': 'Before it is towed',
    'before next trip': 'Before the next trip',
    'within a month': 'Within a month',
    'at next service': 'At the next service',
    'within a year': 'Within a year',
  },
  ruleBooks: { us: 'United States', eu: 'Europe' },
} as const
