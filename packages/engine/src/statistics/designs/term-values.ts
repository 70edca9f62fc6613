import type { LinearFit } from '@fillwright/stats/designs';
import type { ValuesOf } from '#catalogue';
import type { TERM_FIELDS } from './fit-fields.ts';
import { present } from './present.ts';

/**
 * Coefficients of a linear fit, under the keys of the catalogue.
 *
 * @param fit - the fit
 * @returns values for `TERM_FIELDS`, term by term
 * @throws nothing
 * @source none: bookkeeping
 */
export function termValues(fit: LinearFit): ValuesOf<typeof TERM_FIELDS>[] {
  return fit.terms.map(({ estimate, standardError, t, p }) =>
    present({ estimate_data: estimate, standardError_data: standardError, t_ratio: t, p_frac: p }),
  );
}
