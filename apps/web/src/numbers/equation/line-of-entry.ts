import type { NumberReference } from '../number-reference.ts';

/**
 * Of an entry with several lines those that one number comes from.
 *
 * @param reference - the number
 * @returns LaTeX; undefined where the whole equation holds
 */
export function lineOfEntry({ entry, output, inputs }: NumberReference): string | undefined {
  if (entry === 'design.after-set-up') return AFTER_SET_UP[output];
  if (entry === 'shells.slug-fit') return SLUG_FIT[output];
  if (entry === 'design.first-weights') return FIRST_WEIGHTS[output];
  if (entry === 'design.dosage-units-outlook') return OUTLOOK[String(inputs['judged'])]?.[output];
  return undefined;
}

const SLUG_FIT: Readonly<Record<string, string>> = {
  dead_mm: 'dead = r_i-\\sqrt{r_i^2-r_s^2}',
  proud_mm: 'proud = \\sqrt{r_c^2-r_s^2}-(r_c-h)',
  longestSlug_mm: 'longest = (L-t)-dead+proud',
};
const LOW = 'n_- = r\\,\\lfloor q_{.01}/r \\rfloor';
const HIGH = 'n_+ = r\\,\\lceil q_{.99}/r \\rceil';
const FIRST_WEIGHTS: Readonly<Record<string, string>> = {
  low_mg: LOW,
  high_mg: HIGH,
  grossLow_mg: `${LOW},\\quad g_- = n_- + \\bar t`,
  grossHigh_mg: `${HIGH},\\quad g_+ = n_+ + \\bar t`,
};

const SET_UP =
  'b = \\sqrt{\\frac{t^2+v_n}{k}},\\quad v_n = \\left(\\frac{\\varphi}{\\lceil n/B\\rceil}+\\frac{1-\\varphi}{n}\\right) u^2';
const outside = (of: 'm' | 'c', spread: string): string =>
  `P_${of} = \\operatorname{mean}_{u,t}\\,2\\,\\Phi(-l_${of}/\\sigma_${of}),\\quad \\sigma_${of} = \\sqrt{${spread}+t^2+b^2},\\quad ${SET_UP}`;
const AFTER_SET_UP: Readonly<Record<string, string>> = {
  sampleMeansOutside_frac: outside('m', 'v_n'),
  capsulesOutside_frac: outside('c', 'u^2'),
  setUp_pct: SET_UP,
};

const BIAS = '\\mu\\sim N(\\bar\\mu,\\sigma_b^2)';
const byOutput = (spread: string): Readonly<Record<string, string>> => ({
  pass_frac: `P = \\operatorname{mean}_{u,\\mu}\\,\\operatorname{Pr}(\\text{both stages} \\mid \\mu,\\sigma),\\quad ${BIAS},\\quad ${spread}`,
  median_pct: `\\operatorname{Pr}(AV_{10} \\le a) = \\tfrac{1}{2},\\quad ${BIAS},\\quad ${spread}`,
});
const OUTLOOK: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  'by-content': byOutput('\\sigma = \\sqrt{u^2+v^2}'),
  'by-mass-variation': byOutput('\\sigma = u\\,\\bar\\mu'),
};
