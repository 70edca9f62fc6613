import type { Criterion, RouteTest } from '@fillwright/engine/design';

/** Names of dosing methods. */
export const DOSING_METHOD_NAMES: Readonly<Record<string, string>> = { 'measuring-disc': 'disc' };

/** What puts a candidate before the next one. */
export const CRITERION_WORDS: Readonly<Record<Criterion, string>> = {
  'sample-means-outside': 'fewer sample means outside',
  'stations-on-spring': 'fewer stations on spring',
  'parts-to-change': 'fewer parts to change',
  'adjuster-margin': 'more room for the pins in the validated range',
  'volume-margin': 'more room in the shell',
  speed: 'speed',
  name: 'nothing that counts; order of names',
};

/** What single measurement would narrow a guess most. */
export const HALVED_BY_WORDS: Readonly<Record<string, string>> = {
  'feed-density': 'weigh a cup of known volume filled from the running bed (ten minutes)',
  'slug-height': 'press slugs at 30, 50 and 75 N in a die of the bore and measure their heights',
  'two-pin-depths': 'weigh ten capsules at two depths of one pin',
  'slug-length': 'measure ten slugs after ejection',
  'wall-friction': 'measure wall friction on the steel of the disc',
  'spring-on-balance': 'press a pin on a balance: preload and rate',
  'powder-balance': 'weigh the powder used against count x mean over an hour',
  'scale-check': 'check the scale with a depth gauge, coming from the same side',
};

/** Names of the uncertain parameters by key; a key that is not here is printed as it is. */
export const PARAMETER_NAMES: Readonly<Record<string, string>> = {
  feedDensity_g_per_mL: 'feed density in the bed',
  refill_ratio: 'refill factor',
  captured_ratio: 'powder captured by a tamp',
  a_frac: 'compression law, a',
  b_per_MPa: 'compression law, b',
  pairDensity_g_per_mL: 'density under a known force',
  slope_pct: 'compression law, slope',
  intercept_pct: 'compression law, intercept',
  springPreload_N: 'spring preload',
  springRate_N_per_mm: 'spring rate',
};

/** Name of an adjuster by its key. @returns `pin 1` for `pin1Depth_mm` */
export const adjusterName = (key: string): string => key.replace(/^pin(\d+)(Depth|Offset)_mm$/, 'pin $1');

/** Compendial tests with their chapters. */
export const TEST_WORDS: Readonly<Record<RouteTest['test'], string>> = {
  'dosage-units-by-mass': 'uniformity of dosage units by mass variation (USP <905>, Ph. Eur. 2.9.40)',
  'dosage-units-by-content': 'uniformity of dosage units by content (USP <905>, Ph. Eur. 2.9.40)',
  'uniformity-of-mass': 'uniformity of mass (Ph. Eur. 2.9.5)',
  'uniformity-of-content': 'uniformity of content (Ph. Eur. 2.9.6)',
};

/** Rules for the target. */
export const TARGET_WORDS = {
  'fixed-fill': 'fixed fill of the dossier',
  'follows-assay': 'fill follows the assay of the blend',
  'fixed-total': 'fixed total, diluent makes up',
} as const;

/** What a value rests on. */
export const BASIS_WORDS = { measured: 'measured', guess: 'guess', calibrated: 'learned from weights' } as const;

/** Headings and sentences of the design in the terminal. */
export const DESIGN_WORDS = {
  target: 'Target',
  ranking: 'Set-ups in order of merit',
  rankingNote: (means: string, single: string): string =>
    `"outside" counts after set-up: sample means beyond ±${means} %, single capsules beyond ±${single} % of the target.`,
  columns: ['#', 'shell', 'by', 'parts', 'pins, mm', 'means', 'capsules', 'spread', 'room in', 'room of', 'parts to'],
  columns2: ['', '', '', '', 'below disc top', 'outside', 'outside', '', 'shell', 'pins', 'change'],
  before: (rank: number, why: string): string => `${rank} before ${rank + 1}: ${why}`,
  nothing: 'Nothing in stock fills this brief. Why, shell by shell:',
  others: 'Why not the others',
  inSize: (size: string): string => `size ${size}`,
  andMore: (count: number): string =>
    `... and ${count} more set${count === 1 ? '' : 's'} of parts for the same kind of reason (--all lists them).`,
  behind: (count: number): string =>
    `${count} further set-up${count === 1 ? '' : 's'} would work, no better than one above in any merit and worse in one.`,
  suitability: { suitable: 'suits', possible: 'is possible for', unsuitable: 'does not suit' },
  sheet: (rank: number): string => `Setting sheet, set-up ${rank}`,
  mounted: 'mounted',
  toFit: 'to fit',
  flush: 'flush',
  scale: (reading: string): string => `scale ${reading}`,
  below: (depth: string): string => `${depth} mm below disc top`,
  station: { 'on-stop': 'on stop', 'on-spring': 'on spring', limited: 'cannot enter', flush: 'flush' },
  perStep: (of: { step: string; median: string; low: string; high: string }): string =>
    `${of.step}: ${of.median} mg a step (${of.low} to ${of.high})`,
  nextPart: (from: string, to: string, change: string): string =>
    `${from} to ${to}: ${change} mg with the pins zeroed again`,
  keptReadings: (working: string, all: string): string =>
    `; with the readings kept ${working} mg${all === working ? '' : ` (${all} mg if the flush pin is left too)`}`,
  start: (what: string): string => `Start with ${what}.`,
  firstWeights: (of: { n: number; low: string; high: string; grossLow: string; grossHigh: string }): string =>
    `The mean of the first ${of.n} should lie between ${of.low} and ${of.high} mg net${of.grossLow === '' ? '' : ` (${of.grossLow} to ${of.grossHigh} mg gross)`} in 98 of 100 such starts.`,
  leave: (low: string, high: string): string => `From ${low} to ${high} mg net leave the machine alone.`,
  turn: (of: {
    side: 'under' | 'over';
    limit: string;
    adjuster: string;
    change: string;
    example: string;
    steps: number;
  }): string =>
    `${of.side === 'under' ? 'Under' : 'Over'} ${of.limit} mg: ${of.adjuster} ${of.side === 'under' ? 'deeper' : 'higher'}, ${of.change} mg a step; ${of.example} mg ${of.side === 'under' ? 'short' : 'too much'} is ${of.steps} steps.`,
  brings: (why: string): string => `That far it brings ${why}: share the steps among the pins.`,
  leavesValidated: 'That far leaves the validated range: a change to be approved.',
  noneOnStop:
    'No pin stands on its stop: disc and springs rule the weight. A step of a pin gives less than on its stop, down to nothing; its gain says how much.',
  stop: 'Outside the first numbers: stop, the model is wrong; measure the feed density before anything is turned.',
  warnings: 'Look out',
  card: 'Limit card',
  cardColumns: ['mg', 'net', 'gross'],
  cardRows: {
    target: 'target',
    mean: (n: number): string => `mean of ${n}`,
    alert: 'single, alert',
    action: 'single, action',
  },
  tare: (of: { mean: string; se: string; n: number; lot: string | undefined }): string =>
    `Tare ${of.mean} mg, standard error ${of.se} mg from ${of.n} shells; valid for ${of.lot === undefined ? 'the lot of these shells' : `shell lot ${of.lot}`} only.`,
  tareGuess: (mean: string): string =>
    `Tare ${mean} mg is trade custom, a guess: weigh 50 shells of the lot before the gross limits are used.`,
  blur: (blur: string): string => `A single gross weight is blurred by its shell: ±${blur} mg (9 in 10).`,
  alertAssumed: 'The alert limit is not in the brief: two thirds of the action limit, a guess.',
  countAssumed: 'The sample size is not in the brief: 20, a guess.',
  noTare: 'No mass of an empty shell is known: weigh 50, then there is a limit card.',
  outlook: 'What the tests of the dossier would say after set-up',
  pass: (pass: string): string => `passes with probability ${pass}`,
  surely: 'passes, at least 999 of 1000 lots like this',
  acceptanceValue: (median: string, p95: string): string =>
    `acceptance value ${median} (median), ${p95} (95 % of samples below)`,
  binds: 'binds',
  noModel: 'no model found: cannot tell',
  contentAssumed: 'no load of the blend given, mean content taken as 100 %',
  content: (of: { substance: string; mean: string; unit: string }): string =>
    `content of ${of.substance}: mean ${of.mean} %, spread between units ${of.unit} % with the blend`,
  gapLoss: (mean: string, sd: string): string =>
    `Consumption: ${mean} ±${sd} % more than the weights through gaps (guess; the weight is not affected).`,
  spread: 'Spread between capsules, % of the mass',
  causes: {
    stroke: 'feed density, common to a stroke',
    'between-bore': 'between bores',
    'pin-length': 'pin length, per column',
    transfer: 'transfer',
    rest: 'rest',
    'bed-level': 'bed level',
  } as Readonly<Record<string, string>>,
  interval: (of: { mean: string; low: string; high: string }): string =>
    `Mean before a trial: ${of.mean} mg, 9 in 10 between ${of.low} and ${of.high} mg. What that rests on:`,
  narrowed: (how: string): string => `halved by: ${how}`,
  capsule: (of: { size: string; released: string; longest: string }): string =>
    `Size ${of.size} to scale: slug ${of.released} mm of ${of.longest} mm that stay whole`,
  cautions: 'Cautions',
  usualCautions: [
    'Limits, target and route come from the registered dossier; this advises, qualified people decide and sign.',
    'Powders of most organic substances form explosible dust: keep dust in, earth metal parts, know your blend.',
    'Pins, disc and carriers crush: isolate the machine before hands go in; never bypass a guard to set a pin.',
  ],
  notices: 'Notices',
} as const;
