/** Words of lines that sum up, in the languages of people who write decimal commas too. */
export const SUMMARY_WORDS: ReadonlySet<string> = new Set([
  ...[
    'mean',
    'average',
    'avg',
    'total',
    'sum',
    'subtotal',
    'sd',
    'std',
    'stdev',
    'deviation',
    'rsd',
    'cv',
    'min',
    'max',
  ],
  ...['minimum', 'maximum', 'range', 'median', 'count', 'variance', 'n', 's', 'x̄', 'mittelwert', 'mittel', 'summe'],
  ...['gesamt', 'anzahl', 'moyenne', 'somme', 'média', 'media', 'promedio', 'suma', 'somma', 'gemiddelde', 'medel'],
]);

/** What stands where a balance or a sheet has no value. */
export const NO_VALUE_WORDS: ReadonlySet<string> = new Set([
  ...['#n/a', '#na', '#value!', '#div/0!', '#ref!', '#num!', '#null!', '#name?', 'n/a', 'na', 'nan', 'null', 'none'],
  ...['err', 'error', 'overload', 'underload', 'inf', 'infinity', 'missing'],
]);

/** Words before the number of a capsule. */
export const LABEL_WORDS: ReadonlySet<string> = new Set([
  ...['capsule', 'cap', 'caps', 'sample', 'unit', 'no', 'nr', 'number', 'item', 'weighing', '#', 'id'],
]);

/** Signs beside a weight that change nothing. */
export const SILENT_WORDS: ReadonlySet<string> = new Set(['+', '=', ':', 'stable', 'st', 'S', 'wt', 'weight', 'mass']);

/** Marks of a balance, or words, that say what a weight is. Case counts: `g` after a number is a unit, `n` a count. */
export const BASIS_WORDS: Readonly<Record<string, 'gross' | 'net' | 'shell' | undefined>> = {
  ...{ G: 'gross', gross: 'gross', Gross: 'gross', GROSS: 'gross', filled: 'gross' },
  ...{ N: 'net', net: 'net', Net: 'net', NET: 'net' },
  ...{ T: 'shell', tare: 'shell', Tare: 'shell', TARE: 'shell', shell: 'shell', Shell: 'shell', empty: 'shell' },
};

/** Masses in units that are known and not taken: nobody weighs a capsule in them. */
export const OTHER_UNITS: ReadonlySet<string> = new Set([
  ...['kg', 'ug', 'µg', 'μg', 'mcg', 'ng', 'gr', 'gn', 'ct', 'oz', 'ozt', 'lb', 'dwt', 't', '%', 'ml', 'mm', 'n', 'mn'],
]);

/** Headings of columns in plain words. `mass` is what the caller says it is; `none` is known and not used. */
export const COLUMN_WORDS: Readonly<Record<string, string | undefined>> = {
  ...{ gross: 'gross', 'gross weight': 'gross', 'gross mass': 'gross', filled: 'gross', 'filled capsule': 'gross' },
  ...{ net: 'net', 'net weight': 'net', 'net mass': 'net', fill: 'net', contents: 'net', content: 'net' },
  ...{ shell: 'shell', shells: 'shell', tare: 'shell', empty: 'shell', empties: 'shell', 'empty shell': 'shell' },
  ...{ 'empty shells': 'shell', 'empty capsule': 'shell', 'shell weight': 'shell', 'shell mass': 'shell' },
  ...{ weight: 'mass', weights: 'mass', mass: 'mass', masses: 'mass', value: 'mass', 'weight of capsule': 'mass' },
  ...{ group: 'group', 'dosing group': 'group', column: 'column', 'pin column': 'column', carrier: 'carrier' },
  ...{ bore: 'bore', stroke: 'stroke', cycle: 'stroke', time: 'time', clock: 'time' },
  ...{ no: 'none', nr: 'none', number: 'none', '#': 'none', capsule: 'none', sample: 'none', id: 'none', date: 'none' },
};
