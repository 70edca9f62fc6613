const ROUNDING = { usual_mg: 5, small_mg: 2, smallBelow_mg: 100 } as const;

/** Where the mean of the first weights lies in 98 of 100 starts, net. */
export interface FirstWeights {
  readonly low_mg: number;
  readonly high_mg: number;
  readonly roundedTo_mg: number;
}

/**
 * The first numbers of the setting sheet: central 98 % of the mean before the trial, rounded outward.
 *
 * @param input - ends of the central 98 %, and the target that decides the rounding
 * @returns low and high in steps of 5 mg, 2 mg below a target of 100 mg
 * @throws nothing
 * @source this project's rule: 90 % would stop one sound start in ten
 */
export function firstWeights(input: {
  readonly low98_mg: number;
  readonly high98_mg: number;
  readonly target_mg: number;
}): FirstWeights {
  const { low98_mg, high98_mg, target_mg } = input;
  const roundedTo_mg = target_mg < ROUNDING.smallBelow_mg ? ROUNDING.small_mg : ROUNDING.usual_mg;
  return {
    low_mg: Math.floor(low98_mg / roundedTo_mg) * roundedTo_mg,
    high_mg: Math.ceil(high98_mg / roundedTo_mg) * roundedTo_mg,
    roundedTo_mg,
  };
}
