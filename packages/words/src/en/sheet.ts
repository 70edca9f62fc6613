/** Setting sheet (front) and limit card (back), to print. */
export const SHEET_WORDS = {
  /** The page around them. */
  print: 'Print both pages (A4)',
  toBench: 'Back to the bench',
  howToPrint:
    'Paper A4, scale 100 %, both sides. The line of 100 mm at the foot of the front shows whether the drawings are to scale.',
  noBrief: 'The brief is being read.',
  faulty: 'The brief has faults: there is nothing to print before they are put right.',
  noCandidate: 'No set-up is chosen. Go to the bench and take one.',
  noPlace: 'The shell of this set-up is no longer in the brief. Go to the bench and take another set-up.',
  computing: 'The sheet is being computed.',

  /** Head and foot. */
  frontTitle: (of: { product: string; size: string; target: string }): string =>
    `Setting sheet: ${of.product}, size ${of.size}, ${of.target}`,
  about: (of: { filler: string; method: string; blend: string; shellLot: string }): string =>
    [
      `${of.filler}, ${of.method}.`,
      of.blend === '' ? '' : `Blend ${of.blend}.`,
      of.shellLot === '' ? '' : `Shell lot ${of.shellLot}.`,
    ]
      .filter((text) => text !== '')
      .join(' '),
  version: (of: { code: string; version: number }): string => `${of.code}, brief version ${of.version}`,
  status: { draft: 'Draft', saved: 'Saved' },
  kept: (of: { status: string; by: string }): string => `${of.status} by ${of.by}, unsigned.`,
  notKept: 'It has changes that are not kept yet.',
  notKnown: 'The server has not confirmed it.',
  files: (files: readonly { file: string; version?: number }[]): string =>
    files
      .map(({ file, version }) => `${file} ${version === undefined ? 'of the examples' : `version ${version}`}`)
      .join(', '),
  replaces: (version: number): string => `Replaces version ${version}.`,
  sha: (short: string): string => `sha ${short}`,
  noSha: 'no sha',
  seed: (seed: number): string => `seed ${seed}`,
  printed: (of: { at: string; by: string }): string => `Printed ${of.at}; name: ${of.by}.`,
  page: (page: number): string => `page ${page} of 2`,
  backIs: 'Back: limit card',
  frontIs: 'Front: setting sheet',

  /** 1 Parts. */
  partsTitle: 'Fit these parts',
  partColumns: {
    part: 'part',
    number: 'number',
    size: 'by the inventory',
    count: 'count',
    out: 'out',
    in: 'in',
    clean: 'clean',
    check: 'check when fitted',
  },
  partNames: { disc: 'disc', springs: 'springs' } as Readonly<Record<string, string>>,
  mounted: 'mounted',
  toFit: 'to fit',
  partChecks: { disc: 'gap to base, 4 points', springs: 'each pin moves freely' } as Readonly<Record<string, string>>,

  /** 2 Pins. */
  pinsTitle: 'Set the pins to the scale',
  pin: (station: number): string => `pin ${station}`,
  flush: 'flush',
  massesBelow: 'mg after each station, predicted',
  scaleOf: (scale: string): string => `${scale} : 1`,
  drawingLabel: (of: { readings: string; size: string }): string =>
    `Stations in section with the pins at ${of.readings}, and the capsule of size ${of.size}; the table below says the same.`,
  pinColumns: {
    pin: 'pin',
    scale: 'scale',
    below: 'below disc face',
    validated: 'validated, scale',
    step: 'one step',
    state: 'pin is',
    zero: 'zero check',
    asSet: 'as set',
    checked: 'checked',
  },
  perStep: (of: { step: string; mass: string }): string => `${of.step}: ${of.mass}`,
  noGain: 'none',
  notValidated: 'outside: to be approved',
  deeperUp: 'A higher number is deeper, heavier.',
  deeperDown: 'A lower number is deeper, heavier.',
  deeperMixed: 'The scales do not all run the same way: see the depths.',
  sameSide: 'Come to a mark from one side only.',
  twoTurns: 'Two turns by hand',
  bedLevel: 'Bed level',
  otherDisc: (parts: readonly string[]): string => `Another part with the readings kept: ${parts.join('; ')}.`,
  keptReadings: (of: { part: string; change: string; kept: string }): string =>
    `${of.part} ${of.kept} (zeroed again ${of.change})`,

  /** 3 First weights. */
  firstTitle: (of: { count: number; low: string; high: string }): string =>
    `First ${of.count} should weigh ${of.low}–${of.high} mg net, on average`,
  firstNote: 'So in 98 of 100 such starts.',
  net: 'net, mg',
  gross: 'gross, mg',
  actions: {
    stop: 'stop',
    leave: 'leave it alone',
    more: (adjuster: string): string => `${adjuster} deeper`,
    less: (adjuster: string): string => `${adjuster} higher`,
    noAdjuster: 'no pin helps: call',
  },
  schematic: 'The bar is not to scale.',
  barLabel: 'Edges of the bar, net and gross',
  limits: 'Limits, net and gross',
  turnUnder: (of: { low: string }): string => `Under ${of.low}:`,
  turnOver: (of: { high: string }): string => `Over ${of.high}:`,
  turn: (of: { adjuster: string; way: 'deeper' | 'higher'; step: string; change: string; target: string }): string =>
    `${of.adjuster} ${of.way}, one step of ${of.step} for each ${of.change} mg off ${of.target}.`,
  example: (of: { example: string; side: 'short' | 'over'; steps: number; from: string; to: string }): string =>
    `Example: ${of.example} mg ${of.side === 'short' ? 'short' : 'too much'} is ${of.steps} steps, ${of.from} to ${of.to}.`,
  stay: (of: { low: string; high: string }): string => `Stay in ${of.low}–${of.high}.`,
  againAfter: 'Weigh again.',
  stopTitle: (of: { low: string; high: string }): string => `Outside ${of.low}–${of.high}: stop, the model is wrong.`,
  stopWhat:
    'Touch no pin. Weigh one cup of bed for the feed density, check disc and spring numbers, call the engineer.',
  discard: (count: number): string =>
    `Throw away the first strokes after an empty disc: ____. Weigh ${count}, mark the mean on the bar with a cross.`,
  meanGross: 'mean, gross',
  minusTare: (tare: string): string => `− ${tare} =`,
  isNet: 'net',
  balance: 'balance',
  time: 'time',
  by: 'by',
  lookOut: 'Look out',
  checkLine: '100 mm; if not, the drawings are not to scale',

  /** Back. */
  backTitle: 'Limit card: weigh against this',
  hangs: (of: { product: string; size: string }): string =>
    `${of.product}, size ${of.size}. Hangs at the balance. Void when the shell lot changes.`,
  lotOnly: (lot: string): string => `Shell lot ${lot} only`,
  noLot: 'Shell lot: ____________',
  fromCapsule: 'from capsule',
  tare: (of: { mean: string; count: number; sd: string; error: string }): string =>
    `tare ${of.mean} mg: mean of ${of.count} empty shells, sd ${of.sd}, standard error ${of.error}`,
  tareGuess: (mean: string): string =>
    `tare ${mean} mg is trade custom, a guess: weigh 50 shells of the lot before the gross limits are used`,
  grossIs: (mean: string): string => `gross = net + ${mean}`,
  noTare: 'No mass of an empty shell is known: weigh 50 shells of the lot, then there is a limit card.',
  axisNet: 'net, mg',
  axisSingle: 'single capsule',
  axisMean: (count: number): string => `mean of ${count}`,
  axisGross: 'gross, mg: on the balance',
  axisWhat: 'what to do',
  axisLabel: (count: number): string =>
    `Limits of single capsules and of the mean of ${count} on one axis; every value stands beside its mark, net left, gross right.`,
  action: 'action',
  alert: 'alert',
  leave: 'leave it alone',
  rows: {
    singleAction: 'single, action',
    singleAlert: 'single, alert',
    meanAction: (count: number): string => `mean of ${count}, action`,
    target: 'target',
  },
  todo: {
    singleAction: 'Set aside, full revolution, call.',
    singleAlert: (count: number): string => `Weigh ${count} more.`,
    meanAction: (of: { count: number; turn: string }): string => `Weigh ${of.count} more; if again, ${of.turn}.`,
    turn: (of: { adjuster: string; way: 'deeper' | 'higher'; change: string }): string =>
      `${of.adjuster} ${of.way}, a step for each ${of.change} mg`,
    noTurn: 'call: no pin stands on its stop',
    target: 'Leave it alone.',
  },
  eachSample: (count: number): string => `Each sample: ${count} capsules, every ______ min`,
  steps: (count: number): readonly string[] => [
    `Take ${count} from the chute; weigh each, gross.`,
    'Compare each with the wide bar, the mean with the narrow one.',
    'Action: set aside all since the last good sample, jog a full revolution, call.',
    `After any touch weigh ${count} again before you go.`,
  ],
  nearTitle: 'Near a single limit',
  near: (of: { sd: string; blur: string; low: string; high: string }): string =>
    `Shells differ by ${of.sd} mg sd, which blurs one gross weight by ±${of.blur} mg (9 in 10). Between ${of.low}, or ${of.high}, gross cannot tell: open the capsule and weigh its fill.`,
  limitsFrom: (of: { mean: string; single: string; alert: string }): string =>
    `Mean ±${of.mean} %, single ±${of.single} %, alert ±${of.alert} % of the target: the brief.`,
  alertAssumed: 'The alert limit is not in the brief: two thirds of the action limit, a guess.',
  countAssumed: 'The sample size is not in the brief: 20, a guess.',
  cautions: 'Cautions',
  signatures: 'Signatures',
  signColumns: { meaning: 'meaning', name: 'printed name, signature', date: 'date, time, UTC offset' },
  meanings: [
    'I set the machine as on page 1 and counted the parts.',
    'I checked the settings and the tare, independently.',
    'I approve these limits for this shell lot (quality).',
  ],
  signed: (what: string): string =>
    `A signature covers ${what}, both pages. Nothing here is signed by the program: names in print are typed.`,
} as const;
