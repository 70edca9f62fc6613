/**
 * How dense a powder becomes under the pressure of a ram, in a die of the bore in question: ram force / area against
 * the mean density of the plug, so wall friction is inside the law.
 *
 * kawakita: C = 1 - rho_i/rho = a b P / (1 + b P). `a_frac` (0 to 1) and `b_per_MPa` belong to the one initial packing
 * `initialDensity_g_per_mL`; fit them on data filled the way the machine fills.
 * walker: 100 rho_true/rho = intercept - slope log10(P / referencePressure); slope per decade of pressure, both in % of
 * the volume of the solid.
 */
export type CompressionLaw =
  | {
      readonly kind: 'kawakita';
      readonly a_frac: number;
      readonly b_per_MPa: number;
      readonly initialDensity_g_per_mL: number;
    }
  | {
      readonly kind: 'walker';
      readonly slope_pct: number;
      readonly intercept_pct: number;
      readonly referencePressure_MPa: number;
      readonly trueDensity_g_per_mL: number;
    };
