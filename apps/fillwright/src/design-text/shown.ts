import { plainNumber } from '@fillwright/words/numbers';

/** A number with fixed decimals, as the terminal prints it. @returns `cannot tell` for NaN */
export const fixed = (value: number, decimals = 1): string => plainNumber(value, { decimals });

/** A share as per cent. @returns for example `9.7 %` */
export const percent = (share_frac: number, decimals = 1): string => `${fixed(100 * share_frac, decimals)} %`;

/** A number with as few decimals as it needs, at most two. @returns for example `15.5` */
export const short = (value: number): string => plainNumber(Number(value.toFixed(2)), { upToSignificantDigits: 8 });

/** A change with its sign. @returns for example `+9.2` */
export const signed = (value: number, decimals = 1): string => (value > 0 ? '+' : '') + fixed(value, decimals);
