/** What `fillwright accept` prints around verdicts and figures. */
export const ACCEPT_WORDS = {
  weightsMissing: 'Name the file with the weights, or - for standard input; examples/alder-200-gross.csv is one.',
  notAChoice: (flag: string, text: string, choices: readonly string[]): string =>
    `${flag} "${text}" is not known: take one of ${choices.join(', ')}.`,
  notInRange: (of: { flag: string; text: string; above: number; max: number; isWhole: boolean }): string =>
    `${of.flag} "${of.text}": ${of.isWhole ? 'a whole number' : 'a number'} above ${of.above} and up to ${of.max} is asked, without marks for thousands.`,
  inputTwice: 'Standard input can be read once: give weights or shells as a file.',
  wheelMissing: '--revolution needs the wheel: a brief that names the filler, or --group-count and --column-count.',
  setUpNeedsBrief: '--set-up is a rank of "fillwright design": name the brief with --brief.',
  bothLimits: 'Limits come in pairs: give --mean-action_pct and --individual-action_pct.',
  targetMissing: 'Limits are in % of the target: give --target_mg.',
  onlyShells: 'only empty shells were found: name the column of weights "gross", and give shells by --shells.',
  shellsNotRead: 'every line of empty shells must be read, and two at least; heal these lines or take them out.',
  theSubstance: 'the substance',
  verdicts: { pass: 'pass', fail: 'FAIL', 'cannot-tell': 'cannot tell' } as const,
  verdict: (verdict: 'pass' | 'fail' | 'cannot-tell', of: { purpose: string; isAsked: boolean }): string =>
    `Verdict: ${verdict === 'cannot-tell' ? 'cannot tell' : verdict}, as ${of.purpose}${of.isAsked ? '' : '; no limit and no test was asked about'}.`,
  summary: (lines: number, weights: number, struck: number): string =>
    `Weights: ${lines} ${lines === 1 ? 'line' : 'lines'}, ${weights} ${weights === 1 ? 'weight' : 'weights'}, ${struck} struck. Intervals are 95 %.`,
  summaryColumns: ['', 'n', 'mean mg', 'between', 'sd mg', 'RSD', 'between', 'lowest', 'highest'],
  oneWeight: 'one weight has no spread',
  tare: (of: { way: string; mean: string; sd?: string; count: number; error?: string }): string =>
    [
      `Tare ${of.mean} mg`,
      of.count > 0 ? ` of ${of.count} shells` : ', a guess',
      of.sd === undefined ? '' : `, sd ${of.sd}`,
      of.error === undefined ? '' : `, standard error ${of.error}`,
      of.way === 'own-shell' ? ', each taken off its own capsule.' : ', the mean taken off every capsule.',
    ].join(''),
  netSpread: (gross: string, shell: string, net: string): string =>
    `Spread of the fill: root of ${gross}^2 - ${shell}^2 = ${net} mg.`,
  far: (of: { place: number; mass: string; deviation: string }): string =>
    `Far from the others, kept: line ${of.place}, ${of.mass} mg (${of.deviation} % from the mean).`,
  capability: (of: { pp: string; ppk: string; low: string; high: string; count: number }): string =>
    `Performance against the single limits, n = ${of.count}: Pp ${of.pp}, Ppk ${of.ppk} (${of.low} to ${of.high}).`,
  limits: 'In-process limits',
  limitOf: { mean: 'mean', single: 'single capsules' } as const,
  grossLimits: (low: string, high: string): string => `, ${low} to ${high} gross`,
  tests: 'Tests of the dossier',
  outside: 'outside',
  alerts: 'alert',
  capsule: (of: { number: number; line: number | undefined; mass: string; deviation: string }): string =>
    `no. ${of.number}${of.line === undefined ? '' : ` (line ${of.line})`} ${of.mass} mg, ${of.deviation} %`,
  more: (count: number): string => ` and ${count} more`,
  wouldBe: (verdict: string): string => `the numbers alone would say: ${verdict}`,
  lookInto: (text: string): string => `look into: ${text}`,
  source: (text: string): string => `after ${text}`,
  assurances: 'What a further sample of the same process would do (normal weights, taken all over the run)',
  assurance: (of: { name: string; confidence: string; bound?: string; atEstimate: string }): string =>
    of.bound === undefined
      ? `${of.name}: passes with ${of.atEstimate} if mean and spread are as found.`
      : `${of.name}: passes with at least ${of.bound} at ${of.confidence} confidence (${of.atEstimate} if mean and spread are as found).`,
  revolution: 'One full revolution, net mg; * is odd',
  column: 'column',
  mean: 'mean',
  group: (group: number): string => `group ${group}`,
  columnOf: (column: number): string => `column ${column}`,
  odd: (of: { name: string; effect: string; low: string; high: string; chance: string }): string =>
    `${of.name}: ${of.effect} mg against the rest (${of.low} to ${of.high}); chance alone makes any so odd with P ${of.chance}.`,
  causes: 'What each cause would leave, best fit first (no probabilities: like patterns leave the same)',
  anyCause: { column: 'one column off', group: 'one group off', bore: 'one bore off' } as const,
  stuck: (adjuster: string): string => `${adjuster} stuck up`,
  left: (share: string): string => `leaves ${share} unexplained`,
  fits: 'fits',
  aliased: 'One revolution cannot tell group from carrier, nor column from bore: swap the pin, or jog another.',
  histogram: 'Net mg',
  limitNames: {
    'action-low': 'single limit',
    'alert-low': 'alert',
    'mean-low': 'mean limit',
    'mean-high': 'mean limit',
    'alert-high': 'alert',
    'action-high': 'single limit',
  } as const,
  struck: 'Struck lines, kept as they came',
  struckLine: (of: { line: number; raw: string; mark: string; todo: string | undefined }): string =>
    `line ${of.line} "${of.raw}": ${of.mark}${of.todo === undefined ? '' : `; ${of.todo}`}.`,
  moreLines: (count: number): string => `and ${count} more lines.`,
  notes: 'Notes',
  caution:
    'Which test applies, its limits and what counts as data of the lot come from the registered dossier. This advises; qualified people decide and sign.',
} as const;
