import type { SettingGain } from './gain-of.ts';
import type { StationTrace } from '@fillwright/engine/dosing';
import { FILL_WORDS } from '@fillwright/words/en';
import { quantityForReading } from '@fillwright/words/numbers';
import { fixed } from '../figures.ts';

/** A step that changes the mass by less than this does nothing that a balance shows over the spread of capsules. */
const NOTHING_mg = 0.05;

/** What a pin does where it stands. @returns for example `on stop, 15 N` */
export function stateText({ regime, force_N }: Pick<StationTrace, 'regime' | 'force_N'>): string {
  const force = force_N === undefined ? '' : quantityForReading(force_N, 'N', { decimals: 0 });
  return FILL_WORDS.stationState(FILL_WORDS.regimes[regime], force);
}

/** What one step does to the mass. @returns `1.7`, `about 0`, or nothing where it is not known */
export function gainText(gain: SettingGain | undefined): string {
  if (!gain) return '';
  const { median_mg_per_step } = gain;
  return Math.abs(median_mg_per_step) < NOTHING_mg ? FILL_WORDS.about0 : fixed(median_mg_per_step, 1);
}
