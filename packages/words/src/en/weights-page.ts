import { plainNumber } from '#numbers';

/** Thousands stand apart by a narrow blank: 10 000. */
const whole = (count: number): string =>
  String(count).replace(/(\d)(?=(\d{3})+$)/g, count < 10_000 ? '$1' : '$1\u202F');
const counted = (count: number, one: string): string => `${whole(count)} ${one}${count === 1 ? '' : 's'}`;
const mg = (value: number, decimals = 1): string => plainNumber(value, { decimals }).replace('-', '−');

/** The page of weights: pasted text, conclusion, verdicts, limit card, one page of paper. */
export const WEIGHTS_PAGE_WORDS = {
  title: 'Weights',
  noProduct: 'Weights without a product',
  opening: 'Looking up what is kept …',
  start: 'Judge weights without a product',
  startNote: 'Paste a column of gross weights; type target and limits. Verdicts and a limit card come back.',
  toStart: 'To all products',
  toWeights: 'Paste weights',
  word: (count: number): string => counted(count, 'weight'),
  mg,
  empty: {
    title: 'Paste 20 to 200 gross weights, and see whether to leave the machine alone',
    steps: [
      'One weight a line, as it comes from the balance or a spreadsheet: 527,9 or 527.9, with or without mg. Headings, means and notes may stay in.',
      'Some fifty empty shells of the same lot in the second box: without a tare nothing is known of the fill.',
      'A full revolution, jogged group after group, shows which column, group or bore is odd.',
    ],
    example: 'Show an example: a revolution with one light column',
  },
  weights: 'Weights',
  weightsHelp: 'One a line; up to 10 000. A first line may name columns: gross, shell, group, column.',
  shells: 'Empty shells of the lot',
  shellsHelp: 'One a line; 50 make a good tare.',
  openFile: 'Open a file',
  drop: 'Drop the file: its text replaces the weights, and undo brings them back.',
  edit: 'Change the text',
  undo: 'Undo',
  redo: 'Redo',
  undoKeys: 'Ctrl+Z',
  redoKeys: 'Ctrl+Shift+Z or Ctrl+Y',
  print: 'Print verdicts and limit card',
  asked: 'What is asked',
  kept: 'Kept as it came',
  counts: (of: { lines: number; weights: number; struck: number }): string =>
    `${counted(of.lines, 'line')}: ${counted(of.weights, 'weight')}${of.struck === 0 ? '' : `, ${whole(of.struck)} struck as no weight`}`,
  shellCounts: (of: { lines: number; shells: number; struck: number }): string =>
    `${counted(of.lines, 'line')}: ${counted(of.shells, 'shell')}${of.struck === 0 ? '' : `, ${whole(of.struck)} struck`}`,
  listLabel: (what: string): string => `${what}, line by line`,
  far: 'far off',
  low: 'low',
  high: 'high',
  line: (line: number, mark: string): string => `line ${line}, ${mark}`,
  toDo: 'Lines to look at',
  lineToDo: (of: { line: number; raw: string; mark: string; todo: string }): string =>
    `Line ${of.line}, “${of.raw.trim()}”: ${of.mark}; ${of.todo}.`,
  moreLines: (count: number): string => `And ${count} more; they are struck in the list.`,
  choices: {
    purpose: 'These weights are',
    purposeHelp: 'What they may decide. Data of a trial never release a lot.',
    purposes: { trial: 'of a trial or set-up', 'in-process': 'an in-process check', release: 'a release sample' },
    basis: 'The balance showed',
    basisHelp: 'A heading in the text says it better.',
    bases: { gross: 'gross weights', net: 'net weights' },
    unit: 'Unit',
    unitHelp: 'For weights that bear none.',
    noUnit: 'as written',
    revolution: 'One full revolution, group after group',
    revolutionHelp: (of: { groups: number; columns: number }): string =>
      `${of.groups} groups of ${of.columns} columns, in that order.`,
    noWheel: 'Say how many groups and columns the filler has.',
    target: 'Target, net',
    targetHelp: 'Of the dossier.',
    mean: 'Mean limit, ±',
    meanHelp: 'In % of the target.',
    single: 'Single limit, ±',
    singleHelp: 'In % of the target.',
    content: 'Assay of the lot',
    contentHelp: 'Content at the mean mass, % of the claim; dosage units by mass need it.',
    groups: 'Groups',
    columns: 'Columns in a group',
    countHelp: 'Of the filler.',
    tests: 'Tests that the dossier names',
  },
  rules: {
    trial: 'Trial: tests are computed and decide nothing about a lot.',
    'in-process': 'In-process check: limits and the in-process tests of the dossier count.',
    release: 'Release: only tests that the dossier names. A failure opens an investigation; there is no second try.',
  },
  nothing: 'Nothing is judged yet: see what is said beside the text.',
  onlyShells: 'Limit card for these shells; paste filled capsules to judge them',
  known: 'What these weights will be held against',
  busy: 'Reading …',
  announced: (of: { count: number; struck: number; sentence: string }): string =>
    `${counted(of.count, 'weight')}${of.struck === 0 ? '' : `, ${whole(of.struck)} lines struck`}. ${of.sentence}`,
  plot: {
    title: 'In the order weighed, and stacked by weight',
    left: 'net mg',
    right: 'gross mg',
    single: 'single',
    mean: 'mean',
    byWeight: 'by weight',
    inOrder: 'in the order weighed',
    group: (group: number): string => (group === 1 ? 'group 1' : String(group)),
    label: (of: { count: number; mean: string; low: string; high: string; odd: number }): string =>
      `${counted(of.count, 'weight')} in the order weighed and stacked: mean ${of.mean} mg, from ${of.low} to ${of.high} mg, ${of.odd} marked.`,
  },
  notes: 'Notes',
  card: {
    title: 'Limit card for these shells',
    titleKnown: 'Limit card of the brief',
    what: 'mg',
    net: 'net',
    gross: 'gross',
    rows: {
      'action-high': 'single, action',
      'alert-high': 'single, alert',
      'mean-high': 'mean, action',
      target: 'target',
      'mean-low': 'mean, action',
      'alert-low': 'single, alert',
      'action-low': 'single, action',
    },
    about: (of: { count: number; tare: string; error: string }): string =>
      `Mean of ${of.count}. Gross = net + ${of.tare}\u202Fmg tare (standard error ${of.error}\u202Fmg); valid for these shells only.`,
    rounded: 'Limits are rounded inwards to 0.1\u202Fmg.',
    guess: (tare: string): string =>
      `Gross = net + ${tare}\u202Fmg tare, a guess of trade custom: weigh 50 empty shells before the gross limits are used.`,
    blur: (blur: string): string => `A shell blurs a single gross weight by ±${blur}\u202Fmg (9 in 10).`,
    alertAssumed: 'Alert: two thirds of the action limit, assumed.',
  },
  paper: {
    title: 'Weights: verdicts and limit card',
    about: (of: { product: string; purpose: string; count: number }): string =>
      `${of.product}; ${of.purpose}; ${counted(of.count, 'capsule')}`,
    printed: (of: { at: string; by: string }): string => `Printed ${of.at} by ${of.by}.`,
    version: (version: number): string => (version === 0 ? 'not kept yet' : `sheet of weights, version ${version}`),
    signed: ['Weighed', 'Checked'],
    advice: 'Advice to a person; the registered dossier and the quality unit decide.',
    verdict: 'Verdict',
    test: 'Judged',
    sum: 'Arithmetic',
  },
} as const;
