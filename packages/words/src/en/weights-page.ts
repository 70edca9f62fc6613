import { plainNumber } from '#numbers';

const counted = (count: number, one: string): string => `${count} ${one}${count === 1 ? '' : 's'}`;
const mg = (value: number, decimals = 1): string => plainNumber(value, { decimals }).replace('-', '−');

/** The page of weights: pasted text, conclusion, verdicts, limit card, one page of paper. */
export const WEIGHTS_PAGE_WORDS = {
  title: 'Weights',
  noProduct: 'Weights without a product',
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
  read: 'Show what was read',
  undo: 'Undo',
  redo: 'Redo',
  print: 'Print verdicts and limit card',
  asked: 'What is asked',
  kept: 'Kept as it came',
  counts: (of: { lines: number; weights: number; struck: number }): string =>
    `${counted(of.lines, 'line')}: ${counted(of.weights, 'weight')}, ${of.struck} struck as no weight`,
  shellCounts: (of: { lines: number; shells: number; struck: number }): string =>
    `${counted(of.lines, 'line')}: ${counted(of.shells, 'shell')}, ${of.struck} struck`,
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
    purposeHelp: 'Data of a trial never release a lot; release data are judged by the tests of the dossier only.',
    purposes: { trial: 'of a trial or set-up', 'in-process': 'an in-process check', release: 'a release sample' },
    basis: 'The balance showed',
    basisHelp: 'A heading in the text says it better.',
    bases: { gross: 'gross weights', net: 'net weights' },
    unit: 'Unit, where none is written',
    unitHelp: 'Asked only where neither heading nor line says it.',
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
    content: 'Content at the mean mass',
    contentHelp: 'From the assay of the lot, % of the claim; the mass variation test needs it.',
    groups: 'Groups',
    columns: 'Columns in a group',
    countHelp: 'Of the filler.',
    tests: 'Tests that the dossier names',
  },
  rules: {
    trial: 'Trial: tests are computed and decide nothing about a lot.',
    'in-process': 'In-process check: limits and the in-process tests of the dossier count.',
    release:
      'Release: only tests that the dossier names. A failure opens an investigation; it is never weighed again until it passes.',
  },
  nothing: 'Nothing is judged yet.',
  busy: 'Reading …',
  verdicts: { pass: 'passes', fail: 'fails', 'cannot-tell': 'no verdict' },
  act: 'act',
  inside: 'inside',
  outside: 'outside',
  alert: 'alert',
  plot: {
    title: 'In the order weighed, and stacked by weight',
    left: 'net mg',
    right: 'gross mg',
    onlyGross: 'gross mg',
    single: 'single',
    mean: 'mean',
    byWeight: 'by weight',
    inOrder: 'in the order weighed',
    group: (group: number): string => (group === 1 ? 'group 1' : String(group)),
    label: (of: { count: number; mean: string; low: string; high: string; odd: number }): string =>
      `${counted(of.count, 'weight')} in the order weighed and stacked: mean ${of.mean} mg, from ${of.low} to ${of.high} mg, ${of.odd} marked.`,
  },
  single: {
    title: (of: { outside: number; count: number }): string =>
      of.outside === 0 ? `All ${of.count} inside single limits` : `${of.outside} of ${of.count} outside single limits`,
    sum: (of: { target: number; half: number; low: string; high: string }): string =>
      `${mg(of.target)} × (1 ± ${plainNumber(of.half, { upToSignificantDigits: 4 })}) = ${of.low} to ${of.high} mg net.`,
    alerts: (count: number): string => `${count} between alert and action.`,
  },
  mean: {
    title: (of: { mean: string; count: number }): string => `${of.mean} mg, mean of ${of.count}`,
    fromGross: (of: { gross: string; tare: string; net: string }): string =>
      `${of.gross} gross − ${of.tare} tare = ${of.net} mg;`,
    limits: (of: { low: string; high: string }): string => `limits ${of.low} to ${of.high} mg.`,
    interval: (of: { low: string; high: string; confidence: string }): string =>
      `The process mean lies between ${of.low} and ${of.high} mg with ${of.confidence} % confidence.`,
  },
  spread: {
    title: (rsd: string): string => `${rsd} % RSD`,
    net: (of: { gross: string; shells: string; sd: string; mean: string }): string =>
      `√(${of.gross}² − ${of.shells}²) = ${of.sd} mg, over ${of.mean} mg.`,
    plain: (of: { sd: string; mean: string }): string => `${of.sd} over ${of.mean} mg.`,
    may: (of: { count: number; low: string; high: string }): string =>
      `With ${of.count} it may be ${of.low} to ${of.high} %.`,
  },
  tare: {
    title: (mean: string): string => `${mean} mg tare`,
    shells: (of: { count: number; sd: string; error: string }): string =>
      `Mean of ${of.count} shells, sd ${of.sd}, standard error ${of.error} mg.`,
    guess: 'A figure of trade custom, a guess: weigh 50 empty shells of the lot.',
    none: 'No tare',
    own: (count: number): string => `Each capsule less its own shell, ${count} pairs.`,
    noneHelp: 'Nothing is known of the fill: paste empty shells of the lot.',
  },
  would: (verdict: string): string => `By the numbers alone: ${verdict}.`,
  who: (names: string): string => `Outside: ${names}.`,
  capsule: (of: { number: number; net: string }): string => `no. ${of.number} (${of.net} mg)`,
  andMore: (count: number): string => `and ${count} more`,
  lookInto: (text: string): string => `Look into ${text}.`,
  source: (text: string): string => `Source: ${text}`,
  assurance: {
    title: 'A further sample of this process',
    bound: (of: { test: string; bound: string; confidence: string }): string =>
      `${of.test}: passes at least ${of.bound} times in 100, with ${of.confidence} % confidence.`,
    estimate: (of: { test: string; chance: string }): string =>
      `${of.test}: ${of.chance} in 100 if mean and spread were exactly these; no bound.`,
  },
  capability: (of: { ppk: string; low: string; high: string; count: number }): string =>
    `Ppk ${of.ppk} from ${of.count} capsules, between ${of.low} and ${of.high}.`,
  notes: 'Notes',
  card: {
    title: 'Limit card for these shells',
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
      `Mean of ${of.count}. Gross = net + ${of.tare} mg tare (standard error ${of.error} mg); valid for these shells only.`,
    alertAssumed: 'Alert: two thirds of the action limit, assumed.',
  },
  revolution: {
    title: 'One full revolution, net mg',
    column: 'column',
    group: (group: number): string => `group ${group}`,
    mean: 'mean',
    odd: 'odd',
    columnTitle: (of: { column: number; effect: number }): string =>
      `${mg(Math.abs(of.effect), 0)} mg ${of.effect < 0 ? 'light' : 'heavy'} in column ${of.column}`,
    groupTitle: (of: { group: number; effect: number }): string =>
      `${mg(Math.abs(of.effect), 0)} mg ${of.effect < 0 ? 'light' : 'heavy'} in group ${of.group}`,
    boreTitle: (of: { group: number; column: number; effect: number }): string =>
      `${mg(Math.abs(of.effect), 0)} mg ${of.effect < 0 ? 'light' : 'heavy'} in group ${of.group}, column ${of.column}`,
    against: (of: { mean: string; rest: string; count: number }): string =>
      `${of.mean} against ${of.rest} mg of the other ${of.count}.`,
    causes: 'What each cause would leave, group by column',
    fits: 'fits',
    fitsLess: 'fits less',
    stuck: (adjuster: string): string => `${adjuster} stuck`,
    kinds: { bore: 'one bore', group: 'one group', all: 'all, as a low bed' },
    check: 'Check these first, second, third; a pattern is a reason to look, never a proof.',
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

/**
 * A revolution of 72 gross weights with column 4 light, as a balance and a spreadsheet leave them; invented.
 *
 * @returns the text of the weights and that of fifty shells, the same every time
 */
export function exampleWeights(): { readonly weights: string; readonly shells: string } {
  // A walk of whole numbers in place of chance: the same example every time.
  let state = 7;
  const next = (): number => {
    state = (state * 48271) % 2147483647;
    return state / 2147483647;
  };
  const bell = (): number => next() + next() + next() + next() - 2;
  const decimal = (value: number): string => value.toFixed(1).replace('.', ',');
  const rows = Array.from({ length: 72 }, (_, i) => {
    const isLight = i % 12 === 3;
    return `G  ${decimal(527 + 15 * bell() - (isLight ? 65 : 0))} mg`;
  });
  const weights = ['Alder 200, set-up', 'Balance 3', ...rows.slice(0, 36), 'G   ----  mg', ...rows.slice(36)];
  const shells = Array.from({ length: 50 }, () => `${decimal(97 + 3.9 * bell())} mg`);
  return { weights: weights.join('\n'), shells: shells.join('\n') };
}
