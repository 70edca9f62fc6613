import type { ForecastView } from './forecast-view.ts';

/** Where the names of the limits stand over the picture, as shares of its axis. */
export interface LimitNames {
  /** Whether the name of a single limit stands inside of it, because there is no room outside. */
  readonly isLowInside: boolean;
  readonly isHighInside: boolean;
  /** Middle of the name of the mean limits. */
  readonly mean_frac: number;
}

/** So much of the axis the name of a single limit takes, and half that of the mean limits, at most. */
const NAME_frac = 0.22;
const HALF_MEAN_frac = 0.09;

/**
 * Places for the names of the limits in one line: those of the single limits beside their lines, that of the mean limits
 * over their middle or as near to it as the others leave room.
 *
 * @param view - the forecast
 * @returns places along the axis
 */
export function limitNames({
  axis,
  singleLow_mg,
  singleHigh_mg,
  meanLow_mg,
  meanHigh_mg,
}: Pick<ForecastView, 'axis' | 'singleLow_mg' | 'singleHigh_mg' | 'meanLow_mg' | 'meanHigh_mg'>): LimitNames {
  const [low_frac, high_frac] = [axis.at_frac(singleLow_mg), axis.at_frac(singleHigh_mg)];
  const [isLowInside, isHighInside] = [low_frac < NAME_frac, 1 - high_frac < NAME_frac];
  const from_frac = low_frac + (isLowInside ? NAME_frac : 0) + HALF_MEAN_frac;
  const to_frac = high_frac - (isHighInside ? NAME_frac : 0) - HALF_MEAN_frac;
  const middle_frac = axis.at_frac((meanLow_mg + meanHigh_mg) / 2);
  const mean_frac =
    from_frac > to_frac ? (from_frac + to_frac) / 2 : Math.min(to_frac, Math.max(from_frac, middle_frac));
  return { isLowInside, isHighInside, mean_frac };
}
