/** Levels of ISO 2859-1; II unless something else is laid down. */
export const LEVELS = ['S-1', 'S-2', 'S-3', 'S-4', 'I', 'II', 'III'] as const;
export type Level = (typeof LEVELS)[number];

/** Acceptance quality limits as printed, in per cent nonconforming or nonconformities per 100 units; above 10 only the latter. */
export const AQLS = [
  ...['0.010', '0.015', '0.025', '0.040', '0.065', '0.10', '0.15', '0.25', '0.40', '0.65'],
  ...['1.0', '1.5', '2.5', '4.0', '6.5', '10', '15', '25', '40', '65', '100', '150', '250', '400', '650', '1000'],
] as readonly string[];
/** Column of the last AQL that may be read as per cent nonconforming. */
export const LAST_PER_CENT_COLUMN = 15;

/** The code letters, S only as the end of an arrow of the tightened table. */
export const LETTERS = ['A', 'B', 'C', 'D', 'E', 'F', 'G', 'H', 'J', 'K', 'L', 'M', 'N', 'P', 'Q', 'R', 'S'] as const;
export type Letter = (typeof LETTERS)[number];

export type Inspection = 'normal' | 'tightened' | 'reduced';
/** Which text the plans are from: they share normal and tightened plans (but for one cell) and differ in reduced ones. */
export type Scheme = 'ISO 2859-1' | 'MIL-STD-105E';

const SIZES = [2, 3, 5, 8, 13, 20, 32, 50, 80, 125, 200, 315, 500, 800, 1250, 2000, 3150];
const REDUCED_SIZES = [2, 2, 2, 3, 5, 8, 13, 20, 32, 50, 80, 125, 200, 315, 500, 800];

/** Sample sizes by row (0 is letter A). */
export const SAMPLE_SIZES: Readonly<Record<Inspection, readonly number[]>> = {
  normal: SIZES,
  tightened: SIZES,
  reduced: REDUCED_SIZES,
};

/** Greatest lot size of each row but the last of the code letter table. */
export const GREATEST_LOTS = [8, 15, 25, 50, 90, 150, 280, 500, 1200, 3200, 10000, 35000, 150000, 500000];
/** One row per class of lot sizes, one letter per level. */
export const CODE_LETTERS = [
  ...['AAAAAAB', 'AAAAABC', 'AABBBCD', 'ABBCCDE', 'BBCCCEF', 'BBCDDFG', 'BCDEEGH', 'BCDEFHJ', 'CCEFGJK', 'CDEGHKL'],
  ...['CDFGJLM', 'CDFHKMN', 'DEGJLNP', 'DEGJMPQ', 'DEHKNQR'],
];
