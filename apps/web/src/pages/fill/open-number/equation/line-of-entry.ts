import type { NumberReference } from '../number-reference.ts';

/**
 * Of an entry with several lines those that one number comes from.
 *
 * @param reference - the number
 * @returns LaTeX; undefined where the whole equation holds
 */
export function lineOfEntry({ entry, output, inputs }: NumberReference): string | undefined {
  if (entry === 'design.first-weights') return FIRST_WEIGHTS[output];
  if (entry === 'design.dosage-units-outlook') return OUTLOOK[String(inputs['judged'])]?.[output];
  return undefined;
}

const LOW = 'n_- = r\\,\\lfloor q_{.01}/r \\rfloor';
const HIGH = 'n_+ = r\\,\\lceil q_{.99}/r \\rceil';
const FIRST_WEIGHTS: Readonly<Record<string, string>> = {
  low_mg: LOW,
  high_mg: HIGH,
  grossLow_mg: `${LOW},\\quad g_- = n_- + \\bar t`,
  grossHigh_mg: `${HIGH},\\quad g_+ = n_+ + \\bar t`,
};

const BIAS = '\\mu\\sim N(\\bar\\mu,\\sigma_b^2)';
const byOutput = (spread: string): Readonly<Record<string, string>> => ({
  pass_frac: `P = \\int P(\\text{both stages} \\mid \\mu,\\sigma)\\,dF(u)\\,dN(\\mu),\\quad ${BIAS},\\quad ${spread}`,
  median_pct: `P(AV_{10} \\le a) = \\tfrac{1}{2},\\quad ${BIAS},\\quad ${spread}`,
});
const OUTLOOK: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  'by-content': byOutput('\\sigma = \\sqrt{u^2+v^2}'),
  'by-mass-variation': byOutput('\\sigma = u\\,\\bar\\mu'),
};
