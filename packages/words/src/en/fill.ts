/** The bench: drawing, levers, forecast, candidates. */
export const FILL_WORDS = {
  drawing: (size: string): string => `Disc stations and capsule of size ${size} in section, on one scale`,
  capsule: (size: string): string => `Capsule of size ${size} in section with its slug`,
  machine: 'Stations in section',
  mm: 'mm',
  asText: 'The drawing as a table',

  /** Parts from stock. */
  discs: 'Disc, from stock',
  springs: 'Springs, from stock',
  discColumns: { height: 'mm', part: 'part', change: 'mg' },
  isSet: 'set',
  isMounted: 'fitted',
  discRow: (of: { height: string; number: string; change: string; isMounted: boolean }): string =>
    `disc ${of.number}, ${of.height} mm high${of.isMounted ? ', fitted' : ''}, ${of.change} mg at the same depths`,
  springRow: (of: { name: string; number: string; preload: string; change: string; isMounted: boolean }): string =>
    `springs ${of.number}, ${of.name}, ${of.preload}${of.isMounted ? ', fitted' : ''}, ${of.change} mg`,

  /** Pins. */
  pin: (station: number): string => `pin ${station}`,
  pinLabel: (station: number): string => `pin ${station}, scale`,
  pinText: (of: { reading: string; depth: string; low: string; high: string; gain: string; what: string }): string =>
    `${of.reading} on the scale, ${of.depth} mm deep, validated ${of.low} to ${of.high}, ${of.gain}, ${of.what}`,
  gainText: (gain: string): string => (gain === '' ? 'gain not known yet' : `${gain} milligrams per step`),
  flush: 'flush',
  /** May break after the stroke. */
  perStep: 'mg/\u200Bstep',
  about0: 'about 0',
  higher: (station: number): string => `pin ${station} one step higher`,
  deeper: (station: number): string => `pin ${station} one step deeper`,
  typeReading: (station: number): string => `reading of pin ${station}`,
  outsideValidated: 'outside the validated range: a change to be approved',
  toBeApproved: 'change to be approved',
  was: (value: string): string => `was ${value}`,
  struck: 'struck level, loose',
  adds: (mass: string): string => `+${mass}`,
  levels: 'levels, adds nothing',
  regimes: { 'on-stop': 'on stop', 'on-spring': 'on spring', limited: 'cannot enter', flush: 'flush' },
  stationState: (regime: string, force: string): string => (force === '' ? regime : `${regime}, ${force}`),
  yieldsAt: (preload: string): string => `spring yields, ${preload}`,
  legend: {
    measured: 'measured',
    calibrated: 'learned from weights',
    guess: 'guess',
    validated: 'validated range',
  },

  /** Why a lever stays where it is. */
  notAReading: (text: string): string => `“${text}” is no reading; type digits with a decimal point or comma.`,
  offStep: (of: { text: string; step: string; lower: string; upper: string }): string =>
    `${of.text} is between two marks: the scale goes in steps of ${of.step}. ${of.lower} or ${of.upper} can be set.`,
  beyondMachine: (of: { station: number; low: string; high: string }): string =>
    `Pin ${of.station} goes from ${of.low} to ${of.high} on this machine; it stays where it is.`,

  /** Table of stations. */
  tableCaption: 'Stations in the order the disc meets them',
  tableColumns: {
    station: 'station',
    reading: 'scale',
    depth: 'set, mm',
    reached: 'reached, mm',
    density: 'g/mL',
    mass: 'mg after',
    state: 'state',
    gain: 'mg/step',
  },

  /** Capsule. */
  free: (value: string): string => `${value} free`,
  freeAbout: 'from the slug’s edge to the dome',
  freeAxis: (value: string): string => `on the axis ${value}`,
  tooLong: (value: string): string => `${value} too long`,
  tooLongAbout: 'it goes in only by crumbling',
  doesNotFit: 'even crumbled it is more than the body holds',
  above: (value: string): string => `${value} above the rim`,
  aboveAbout: 'the cap pushes it home',
  below: (value: string): string => `${value} below the rim`,
  belowAbout: 'all of it inside the body',
  slug: (value: string): string => `${value} slug`,
  longest: (value: string): string => `longest that stays whole: ${value}`,
  springback: (of: { inDisc: string; springback: string }): string =>
    `${of.inDisc} in the disc + ${of.springback} springback`,
  shellLot: (lot: string): string => `Shell lot ${lot}`,
  shellSize: (size: string): string => `Shell size ${size}`,
  shellSizes: (of: { body: string; cap: string }): string => `body ${of.body}, cap ${of.cap}`,
  shellEmpty: (of: { mass: string; sd: string; n: number }): string => `empty ${of.mass}, sd ${of.sd}, n ${of.n}`,
  shellEmptyGuess: (mass: string): string => `empty ${mass}, trade custom`,
  shellEmptyUnknown: 'weight of an empty shell not known',
  dead: (value: string): string => `${value} dead space`,
  deadAbout: (volume: string): string => `under the flat slug, ${volume}`,
  largest: 'Largest slug per shell, mg',
  largestOf: (of: { mass: string; most: string }): string => `${of.mass} of ${of.most}`,

  /** Powder. */
  powder: (name: string): string => `Powder ${name}`,
  material: {
    bulkDensity_g_per_mL: { label: 'poured', help: 'Mass of powder poured into a cylinder, by volume.' },
    tappedDensity_g_per_mL: { label: 'tapped', help: 'The same powder after tapping until it settles no more.' },
    feedDensity_g_per_mL: {
      label: 'feed',
      help: 'Density of the bed in the running bowl: weigh a cup of known volume.',
    },
    refill_ratio: { label: 'refill', help: 'How well a hole left by a pin fills again; 1 is as dense as the bed.' },
    a_frac: { label: 'softness a', help: 'Kawakita a: the largest share of its volume that the powder loses.' },
    b_per_MPa: { label: 'softness b', help: 'Kawakita b: how early it gives way; from slugs of three forces.' },
    axialSpringback_pct: { label: 'springback', help: 'How much longer a slug is after it is pushed out.' },
    unit_pct: { label: 'unit spread', help: 'Spread between capsules from this machine’s own record.' },
  },

  /** Forecast. */
  forecast: (of: { n: number; low: string; high: string }): string =>
    `First ${of.n} should weigh ${of.low}\u2060–\u2060${of.high}\u202Fmg`,
  forecastAbout: 'net, their mean, in 98 of 100 such starts.',
  forecastGross: (of: { low: string; high: string }): string => `Gross ${of.low}\u2060–\u2060${of.high}\u202Fmg.`,
  forecastPending: 'being computed for the new setting; the figures are those of the old one',
  forecastText: (of: { mean: string; low: string; high: string; limits: string }): string =>
    `One hundred capsules as dots around ${of.mean} mg; their mean may lie from ${of.low} to ${of.high} mg; ${of.limits}`,
  forecastLimits: (of: { low: string; high: string; meanLow: string; meanHigh: string }): string =>
    `single limits ${of.low} and ${of.high}, mean limits ${of.meanLow} and ${of.meanHigh}`,
  singleLow: (value: string): string => `single limit ${value}`,
  singleHigh: (value: string): string => `${value} single limit`,
  meanLimits: 'mean limits',
  net: 'net',
  gross: 'gross',
  decisionNumbers: 'Edges of the decision, net and gross',
  zones: {
    stop: 'stop',
    'leave-alone': 'leave it alone',
    deeper: (adjuster: string): string => `${adjuster} deeper`,
    higher: (adjuster: string): string => `${adjuster} higher`,
    noAdjuster: 'no pin helps',
  },
  zoneRows: {
    stop: 'stop; measure the feed density',
    'leave-alone': 'leave it alone',
    deeper: (of: { adjuster: string; gain: string }): string => `${of.adjuster} deeper, a step for each ${of.gain} mg`,
    higher: (of: { adjuster: string; gain: string }): string => `${of.adjuster} higher, a step for each ${of.gain} mg`,
    noAdjuster: 'no pin stands on its stop: disc and springs rule the weight',
  },
  zoneTable: 'What to do with the mean of the first weights',
  readHere:
    'One dot, one capsule; dashes: how far off the heap may be. Read the mean of the first weights here. At stop the model is wrong: measure the feed density.',
  over: (value: string): string => `over ${value}`,
  under: (value: string): string => `under ${value}`,
  correction: (of: { side: 'deeper' | 'higher'; adjuster: string; steps: number }): string =>
    `${of.steps} step${of.steps === 1 ? '' : 's'} ${of.side} with ${of.adjuster}`,
  brings: (move: string, why: string): string => `Going ${move} brings ${why}: share the steps among the pins.`,
  leavesValidated: (move: string): string => `Going ${move} leaves the validated range: a change to be approved.`,

  /** Candidates. */
  candidates: (of: { count: number; target: string }): string =>
    `${COUNTS[of.count] ?? String(of.count)} ${of.count === 1 ? 'way' : 'ways'} to ${of.target}`,
  candidateColumns: {
    rank: '',
    settings: 'pins',
    means: 'means out',
    capsules: 'single out',
    spread: 'spread',
    free: 'free',
    force: 'force',
    change: 'parts to change',
  },
  columnsAbout: (of: { mean: string; single: string }): string =>
    `out: share after set-up beyond ±${of.mean} % (means), ±${of.single} % (single).`,
  candidateLabel: (of: { rank: number; size: string; parts: string; pins: string }): string =>
    // What is seen comes first and in one piece, for whoever speaks it.
    `${of.rank} ${of.pins}: set-up with pins at these readings, size ${of.size}, ${of.parts}`,
  decided: (of: { rank: number; why: string }): string => `before ${of.rank}: ${of.why}`,
  compare: 'compare',
  compareLabel: (rank: number, isCompared: boolean): string =>
    `${isCompared ? 'end comparison' : 'compare'} with set-up ${rank}`,
  comparing: (rank: number): string => `compared with ${rank}: thin lines and second figures`,
  stopComparing: 'end comparison',
  asSet: 'as set',
  movedFrom: (rank: number): string => `moved from ${rank}`,
  behind: (count: number): string =>
    `${count} further set-up${count === 1 ? ' works' : 's work'}, no better in any merit and worse in one.`,
  searching: 'Searching again for the changed brief; these are the old ones.',
  whyNot: 'Why not the others',
  andMore: (count: number): string => `and ${count} more alike`,
  inSize: (size: string): string => `size ${size}`,
  none: 'Nothing in stock fills this brief. Why, shell by shell:',
  print: 'Print',
  settingSheet: 'setting sheet and limit card',
  save: 'Save this design',
  saved: 'Saved as a version of its own; nothing goes to a machine.',
  savedOffline:
    'Not saved: the server does not answer. The design is kept in this browser; save it again when it does.',
  savedConflict: 'Not saved: somebody kept a newer version. Choose between the two above; nothing was overwritten.',
  savedRefused: (why: string): string => `Not saved. ${why}`,
  reasonTitle: 'Why does this design replace the saved one?',
  reasonHelp: 'A saved design stays as it is; this one becomes the next version, with your reason.',
  reasonLabel: 'reason',
  reasonShort: 'A few words at least.',
  cancel: 'Cancel',
  undo: 'Undo',
  redo: 'Redo',

  /** Notes. */
  warnings: 'Look out',
  noWarnings: 'Nothing to look out for at this setting.',
  narrow: (half: string): string => `What would narrow ±${half}\u202Fmg`,
  narrowNothing: 'Nothing left that one measurement would halve.',
  narrowTo: (half: string): string => `to ±${half}\u202Fmg`,
  notices: 'Notices',
  cautions: 'Cautions',
  outlook: 'What the tests of the dossier would say after set-up',
  nothingGoes: 'Nothing goes to a machine from here.',

  /** Other states. */
  reading: 'Reading the brief.',
  faulty: (count: number): string =>
    `The brief has ${count} fault${count === 1 ? '' : 's'}, so nothing can be computed from it.`,
  faultyOld: 'The drawing shows the last brief that was in order.',
  faultLine: (line: number): string => `(line ${line})`,
  toBrief: 'To the brief',
  empty: 'No product is open.',
  toStart: 'To all products',
  notDrawn: (method: string): string => `The dosing method “${method}” has no drawing yet; its figures stand below.`,
  readOnly: 'For reading here; settings are changed on a wider screen.',
  announced: (of: { what: string; mass: string; fit: string }): string =>
    `${of.what}, ${of.mass} milligrams, ${of.fit}`,
  announcedPart: (of: { slot: string; number: string }): string => `${of.slot} ${of.number}`,
  announcedPin: (of: { station: number; reading: string }): string => `pin ${of.station} ${of.reading}`,
  announcedFree: (value: string): string => `${value} millimetres free`,
  announcedTooLong: (value: string): string => `${value} millimetres too long`,
} as const;

const COUNTS: Readonly<Record<number, string>> = { 1: 'One', 2: 'Two', 3: 'Three', 4: 'Four', 5: 'Five', 6: 'Six' };
