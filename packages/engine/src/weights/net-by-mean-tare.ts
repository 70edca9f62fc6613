import { studentQuantile } from '@fillwright/stats/distributions';

/** Gross masses less one mean tare. */
export interface NetByMeanTareInput {
  readonly capsuleCount: number;
  readonly grossSd_mg: number;
  readonly tareSd_mg: number;
  /** Shells weighed; 0 for a tare that was not weighed here. */
  readonly shellCount: number;
  readonly tareStandardError_mg: number;
  readonly confidence_frac: number;
}

/** How sure mean and spread of the net masses are. */
export interface NetByMeanTare {
  /** Either way around the mean. */
  readonly half_mg: number;
  /** Left out where the gross masses spread no more than the shells, or the difference is not told from 0. */
  readonly sd_mg?: number;
  /** Left out with the sd. */
  readonly degreesOfFreedomCount?: number;
}

/**
 * Mean and spread of net masses where every capsule is taken to have the mean shell.
 *
 * half = t sqrt(s_G^2 / n + SE_t^2); s = sqrt(s_G^2 - s_t^2); nu = s^4 / (s_G^4 / (n-1) + s_t^4 / (m-1))
 *
 * @param input - spread of gross masses and shells, how many of each, and the standard error of the mean tare
 * @returns half width of the interval of the mean; sd of the net masses and what it rests on
 * @throws StatsError "out-of-range" (fewer than 2 capsules)
 * @source variance of a difference of independent masses; degrees of freedom after F. E. Satterthwaite (1946), Biometrics Bull. 2
 * @validity normal fills and shells, independent, one shell lot; a small difference of variances is badly known
 */
export function netByMeanTare(input: NetByMeanTareInput): NetByMeanTare {
  const { capsuleCount: n, grossSd_mg, tareSd_mg, shellCount, tareStandardError_mg, confidence_frac } = input;
  const [gross_mg2, shell_mg2] = [grossSd_mg * grossSd_mg, tareSd_mg * tareSd_mg];
  const net_mg2 = gross_mg2 - shell_mg2;
  const t = studentQuantile({ p: (1 - confidence_frac) / 2, degreesOfFreedom: n - 1, tail: 'upper' });
  const half_mg = t * Math.sqrt(gross_mg2 / n + tareStandardError_mg * tareStandardError_mg);
  const shellPart = shellCount > 1 ? (shell_mg2 * shell_mg2) / (shellCount - 1) : 0;
  const degreesOfFreedom = (net_mg2 * net_mg2) / ((gross_mg2 * gross_mg2) / (n - 1) + shellPart);
  if (!(net_mg2 > 0 && degreesOfFreedom >= 1)) return { half_mg };
  return { half_mg, sd_mg: Math.sqrt(net_mg2), degreesOfFreedomCount: degreesOfFreedom };
}
