import type { LimitCard } from '#design';
import type { NetFromGross, WeightsNote } from './weights-judgement.ts';
import type { WeightsInput } from './weights-input.ts';

/** What the notes look at. */
export interface NotedFacts {
  readonly input: WeightsInput;
  readonly netFrom: NetFromGross;
  readonly outlierCount: number;
  readonly card: LimitCard | undefined;
  readonly hasCapability: boolean;
}

/** A shell's central 90 % beyond this share of the single limit hides what the limit should show. @source common practice, no source */
const BLUR_SHARE = 1 / 3;
/** Shells that a tare should rest on: standard error 0.33 mg at a spread of 2.3 mg. @source practice of this project */
const SHELLS_ASKED = 50;
/** Below this a capability has an interval too wide to act on. @source common practice, no source */
const CAPSULES_FOR_CAPABILITY = 50;

/**
 * Things to know that decide nothing by themselves.
 *
 * @param facts - what was weighed and found
 * @returns a code with numbers for each
 * @throws nothing
 * @source practice of this project
 */
export function notesOf(facts: NotedFacts): readonly WeightsNote[] {
  return [...notesOnWeights(facts), ...notesOnTare(facts)];
}

function notesOnWeights({ input, outlierCount, hasCapability }: NotedFacts): WeightsNote[] {
  const { unreadCount = 0, capsules } = input;
  const capsuleCount = capsules.length;
  return [
    ...noteIf(unreadCount > 0, 'weights-not-read', { unreadCount }),
    ...noteIf(outlierCount > 0, 'outliers-flagged', { outlierCount }),
    ...noteIf(hasCapability && capsuleCount < CAPSULES_FOR_CAPABILITY, 'few-for-capability', {
      ...{ capsuleCount, askedCount: CAPSULES_FOR_CAPABILITY },
    }),
  ];
}

function notesOnTare({ netFrom, card }: NotedFacts): WeightsNote[] {
  const { way, shellCount = 0, netVariance_mg2 = 0, tareStandardError_mg = NaN } = netFrom;
  if (way !== 'mean-tare') return [];
  const half_mg = card ? card.individualAction.netHigh_mg - card.target_mg : Infinity;
  const blur_mg = card?.shellBlur_mg ?? 0;
  return [
    ...noteIf(netVariance_mg2 < 0, 'shells-vary-more', { netVariance_mg2 }),
    ...noteIf(shellCount === 0, 'tare-is-guess', {}),
    ...noteIf(shellCount > 0 && shellCount < SHELLS_ASKED, 'few-shells', {
      ...{ shellCount, askedCount: SHELLS_ASKED, tareStandardError_mg },
    }),
    ...noteIf(BLUR_SHARE * half_mg < blur_mg, 'gross-check-not-honest', { blur_mg, half_mg }),
  ];
}

function noteIf(isSo: boolean, code: WeightsNote['code'], numbers: WeightsNote['numbers']): WeightsNote[] {
  return isSo ? [{ code, numbers }] : [];
}
