import type { WeightTest } from '@fillwright/engine/weights';

type Texts<Name extends string> = Readonly<Record<Name, string>>;

const TEST_TITLES: Readonly<Record<WeightTest, string>> = {
  'uniformity-of-mass': 'Uniformity of mass',
  'dosage-units-by-mass': 'Dosage units by mass variation',
  'supplement-mass': 'Mass of supplements',
  'uniformity-of-content': 'Uniformity of content',
  'dosage-units-by-content': 'Dosage units by content',
};

/** Each thing that is judged on the page of weights: title, arithmetic, what to do. Numbers come as texts, so that they can open. */
export const WEIGHTS_VERDICT_WORDS = {
  verdicts: { pass: 'passes', fail: 'fails', 'cannot-tell': 'no verdict' },
  act: 'act',
  inside: 'inside',
  outside: 'outside',
  doesNotApply: 'does not apply',
  tests: TEST_TITLES,
  testOf: (of: Texts<'test' | 'substance'>): string => (of.substance === '' ? of.test : `${of.test}: ${of.substance}`),
  acceptance: (of: Texts<'value'>): string => `Acceptance value ${of.value}.`,
  largest: (of: Texts<'value'>): string => `Largest deviation ${of.value} of the mean.`,
  would: (verdict: string): string => `By the numbers alone: ${verdict}.`,
  lookInto: (text: string): string => `Look into ${text}.`,
  source: (text: string): string => `Source: ${text}`,
  outsideList: (names: string): string => `Outside: ${names}.`,
  capsule: (of: Texts<'number' | 'net'>): string => `no. ${of.number} (${of.net})`,
  andMore: (count: number): string => `and ${count} more`,
  single: {
    all: (count: string): string => `All ${count} inside single limits`,
    some: (of: Texts<'outside' | 'count'>): string => `${of.outside} of ${of.count} outside single limits`,
    notKnown: 'Single limits',
    sum: (of: Texts<'target' | 'half' | 'low' | 'high'>): string =>
      `${of.target} × (1 ± ${of.half}) = ${of.low} to ${of.high} mg net.`,
    range: (of: Texts<'lowest' | 'highest'>): string => `Lightest ${of.lowest}, heaviest ${of.highest} mg.`,
    alerts: (count: string): string => `${count} between alert and action.`,
    setAside: 'Set aside what was made since the last good sample; quality assurance decides on it.',
  },
  mean: {
    title: (of: Texts<'mean' | 'count'>): string => `${of.mean}\u202Fmg, mean of ${of.count}`,
    notKnown: 'Mean',
    fromGross: (of: Texts<'gross' | 'tare' | 'net' | 'low' | 'high'>): string =>
      `${of.gross} gross − ${of.tare} tare = ${of.net}; limits ${of.low} to ${of.high} mg.`,
    limits: (of: Texts<'low' | 'high'>): string => `Limits ${of.low} to ${of.high} mg.`,
    interval: (of: Texts<'low' | 'high' | 'confidence'>): string =>
      `The process mean lies between ${of.low} and ${of.high} mg with ${of.confidence} % confidence.`,
    rest: (of: Texts<'rest' | 'count' | 'odd'>): string => `Without ${of.odd}: ${of.rest} mg, mean of ${of.count}.`,
  },
  spread: {
    title: (rsd: Texts<'rsd'>): string => `${rsd.rsd}\u202F% RSD`,
    net: (of: Texts<'gross' | 'shells' | 'sd' | 'mean'>): string =>
      `√(${of.gross}² − ${of.shells}²) = ${of.sd} mg, over ${of.mean}.`,
    plain: (of: Texts<'sd' | 'mean'>): string => `${of.sd} over ${of.mean} mg.`,
    may: (of: Texts<'count' | 'low' | 'high'>): string => `With ${of.count} it may be ${of.low} to ${of.high} %.`,
    odd: 'The odd place is in it.',
  },
  tare: {
    title: (of: Texts<'tare'>): string => `${of.tare}\u202Fmg tare`,
    shells: (of: Texts<'count' | 'sd' | 'error'>): string =>
      `Mean of ${of.count} shells, sd ${of.sd}, standard error ${of.error} mg.`,
    guess: 'A figure of trade custom, a guess: weigh 50 empty shells of the lot.',
    none: 'No tare',
    net: 'Net weights, as given',
    own: (count: number): string => `Each capsule less its own shell, ${count} pairs.`,
    noneHelp: 'Nothing is known of the fill: paste empty shells of the lot.',
  },
  assurance: {
    title: 'A further sample of this process',
    bound: (of: Texts<'test' | 'bound' | 'confidence' | 'found'>): string =>
      `${of.test}: passes with a chance of at least ${of.bound}, at ${of.confidence} % confidence (${of.found} if mean and spread are as found).`,
    estimate: (of: Texts<'test' | 'found'>): string =>
      `${of.test}: passes with ${of.found} if mean and spread are as found; no bound.`,
    supposes: 'Supposes normal weights, taken all over the run.',
  },
  performance: {
    title: (of: Texts<'ppk'>): string => `Ppk ${of.ppk}`,
    about: (of: Texts<'pp' | 'low' | 'high' | 'count'>): string =>
      `Against the single limits, from ${of.count} capsules: between ${of.low} and ${of.high}; Pp ${of.pp}.`,
  },
  revolution: {
    title: 'One full revolution, net mg',
    column: 'column',
    group: (group: number): string => `group ${group}`,
    columnName: (column: number): string => `column ${column}`,
    boreName: (of: { group: number; column: number }): string => `group ${of.group}, column ${of.column}`,
    mean: 'mean',
    meanWithout: (columns: string): string => `mean, less ${columns}`,
    odd: 'odd',
    light: (of: Texts<'effect' | 'place'>): string => `${of.effect}\u202Fmg light in ${of.place}`,
    heavy: (of: Texts<'effect' | 'place'>): string => `${of.effect}\u202Fmg heavy in ${of.place}`,
    against: (of: Texts<'mean' | 'rest' | 'count'>): string =>
      `${of.mean} against ${of.rest} mg of the other ${of.count}.`,
    stuckCosts: (list: string): string => `Stuck up in one column, ${list}.`,
    costs: (of: Texts<'pin' | 'cost'>): string => `${of.pin} would cost ${of.cost}`,
    forPin: (of: Texts<'hit' | 'all' | 'way'>): string =>
      `A bore serves one group; ${of.hit} of ${of.all} groups are ${of.way} here, so look at what they share: the pin.`,
    forGroup: (of: Texts<'hit' | 'all' | 'way'>): string =>
      `A pin serves one column; ${of.hit} of ${of.all} columns are ${of.way} here, so look at the disc of this group.`,
    forBore: 'Its column and its group are as the others: look at this bore, and whether the capsule was whole.',
    tellApart: {
      column: 'One revolution cannot tell a column from a row of bores: swap the pin with a neighbour and jog another.',
      group: 'One revolution cannot tell a group from its carrier: jog another.',
      bore: 'One capsule may be chance: jog another revolution.',
    },
    light1: 'light',
    heavy1: 'heavy',
    causes: 'What each cause would leave, group by column',
    fits: 'fits',
    stuck: (adjuster: string): string => `${adjuster} stuck up`,
    kinds: { column: 'one column', bore: 'one bore', group: 'one group', all: 'low bed, all alike' },
    notSoMuch: (of: Texts<'would' | 'seen'>): string => `no, ${of.would} and not ${of.seen}`,
    notAlone: (count: string): string => `no, ${count} are off`,
    restFine: (of: Texts<'count' | 'mean'>): string => `no, the other ${of.count} weigh ${of.mean}`,
    nothingOdd: 'No column, group or bore is odd: nothing to free.',
  },
  numbers: {
    grossMean: 'is the mean gross mass',
    tareMean: 'is the mean mass of an empty shell',
    tareError: 'is the standard error of the tare',
    netMean: 'is the mean net mass',
    netSd: 'is the spread of the fill, one standard deviation',
    grossSd: 'is the spread of the gross masses, one standard deviation',
    shellSd: 'is the spread of the shells, one standard deviation',
    rsd: 'is the relative standard deviation of the fill',
    rsdLow: 'is the least that the relative spread may be',
    rsdHigh: 'is the most that the relative spread may be',
    placeMean: (place: string): string => `is the mean net mass of ${place}`,
    meanLow: 'is the lower end for the process mean',
    meanHigh: 'is the upper end for the process mean',
    restMean: 'is the mean of all that no odd place holds',
    lowest: 'is the lightest capsule, net',
    highest: 'is the heaviest capsule, net',
    capsule: (number: number): string => `net is capsule ${number}`,
    deviation: 'is the largest deviation from the mean of the twenty',
    acceptance: 'is the acceptance value',
    meanGross: 'is the mean gross mass that the test takes',
    bound: (test: string): string => `is the bound on passing, ${test}`,
    found: (test: string): string => `is the probability of passing as found, ${test}`,
    performance: 'is the performance index of the nearer side',
    performanceLow: 'is the lower end for that index',
    performanceHigh: 'is the upper end for that index',
    spreadIndex: 'is the index of the spread alone',
    place: (place: string): string => `is how far ${place} is from the rest`,
    origins: {
      pasted: 'pasted on this page',
      found: 'found in these weights',
      tare: 'found in the shells, or the brief',
    },
    remarks: {
      lessTare: (tare: string): string => `Each net mass is gross less ${tare} mg, the mean tare.`,
      best: (tare: string): string =>
        `It is gross less ${tare} mg, the mean tare; n is the best guess of it, which leans to the mean, since a heavy capsule may have a heavy shell.`,
      ownShell: (of: Texts<'gross' | 'shell'>): string => `${of.gross} gross − ${of.shell}, its own shell.`,
      asGiven: 'As weighed.',
      largest: 'The test compares each of the twenty with their own mean.',
    },
  },
} as const;
