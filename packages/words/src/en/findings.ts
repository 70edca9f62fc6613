import type { Finding, FindingCode } from '@fillwright/engine/dosing';
import { plainNumber } from '#numbers';

type Numbers = Finding['numbers'];

/**
 * A verdict about a material or a prediction as one sentence with its numbers.
 *
 * @param finding - code and numbers
 * @returns one sentence
 * @throws nothing
 * @source none: bookkeeping
 */
export function findingSentence({ code, numbers }: Finding): string {
  return FINDINGS[code](numbers);
}

const FINDINGS: Readonly<Record<FindingCode, (numbers: Numbers) => string>> = {
  'bed-level-counts': (n) =>
    `Compressibility index ${of(n, 'index_pct', 0)} %, above ${of(n, 'limit_pct', 0)} %: with flow this poor the level of the bed moves the weight; hold it.`,
  'bore-too-wide': (n) =>
    `The bore of ${of(n, 'bore_mm', 2)} mm does not enter a body of ${of(n, 'body_mm', 2)} mm inside.`,
  'by-crumbling': (n) =>
    `The slug of ${of(n, 'released_mm', 2)} mm is longer than the ${of(n, 'longest_mm', 2)} mm that stay whole in the closed shell: it goes in only by crumbling (dust, powder in the lock, dented ends).`,
  'disc-outside-validated': (n) =>
    `Disc height ${of(n, 'height_mm', 2)} mm is outside the validated ${of(n, 'min_mm', 1)} to ${of(n, 'max_mm', 1)} mm: a change to be approved.`,
  'disc-too-tall': (n) =>
    `The disc of ${of(n, 'height_mm', 2)} mm already holds ${of(n, 'flush_mg', 1)} mg with every pin flush, above the target of ${of(n, 'target_mg', 1)} mg.`,
  'does-not-fit': (n) =>
    `The slug of ${of(n, 'released_mm', 2)} mm does not fit: the closed shell keeps ${of(n, 'longest_mm', 2)} mm whole, and even crumbled it is more than the body holds.`,
  'flow-poor': (n) =>
    `Compressibility index ${of(n, 'index_pct', 0)} %, above ${of(n, 'limit_pct', 0)} %: possible, but flow is poor.`,
  'flow-suits': (n) =>
    `Compressibility index ${of(n, 'index_pct', 0)} %, between ${of(n, 'low_pct', 0)} and ${of(n, 'high_pct', 0)} %, and a slug held together on the bench.`,
  'flow-too-free': (n) =>
    `Compressibility index ${of(n, 'index_pct', 0)} %, below ${of(n, 'limit_pct', 0)} %: possible, but a powder this free hardly holds a slug and leaks under the disc.`,
  'flow-too-poor': (n) =>
    `Compressibility index ${of(n, 'index_pct', 0)} %, above ${of(n, 'limit_pct', 0)} %: it will not flow into the bores evenly.`,
  'force-beyond-record': (n) =>
    `Station ${of(n, 'station', 0)} presses with ${of(n, 'force_N', 0)} N; research on slugs goes to ${of(n, 'limit_N', 0)} N, beyond it nothing is known.`,
  'leaks-under-disc': (n) =>
    `Compressibility index ${of(n, 'index_pct', 0)} %, below ${of(n, 'limit_pct', 0)} %: check the gap under the disc, free powder leaks there.`,
  limited: (n) =>
    `Station ${of(n, 'station', 0)} cannot enter: the slug is already denser than its spring can press (${of(n, 'force_N', 0)} N); this pin does nothing.`,
  'loose-last-refill': (n) =>
    `Station ${of(n, 'station', 0)} leaves ${of(n, 'loose_mm', 1)} mm of loose powder on the slug, above ${of(n, 'limit_mm', 0)} mm: powder on the rim and in the lock.`,
  'no-disc-for-size': (n) => `No disc for size ${String(n['size'])} is in stock.`,
  'no-geometry': (n) => `Not known of this shell: ${String(n['missing'])}; measure them to include it.`,
  'no-slug': (n) =>
    `No slug on the bench at ${of(n, 'limit_N', 0)} N or less (tried: ${of(n, 'force_N', 0)} N): a disc needs one that holds together.`,
  'on-spring': (n) =>
    `Station ${of(n, 'station', 0)} stops at ${of(n, 'reached_mm', 1)} mm of ${of(n, 'set_mm', 1)} mm: its spring yields at ${of(n, 'force_N', 0)} N. A step of this pin gives less than on its stop, down to nothing with deep pins; its gain says how much.`,
  'outside-validated': (n) =>
    `A pin would stand at ${of(n, 'depth_mm' in n ? 'depth_mm' : 'set_mm', 1)} mm, outside the validated ${of(n, 'min_mm', 1)} to ${of(n, 'max_mm', 1)} mm: a change to be approved.`,
  'pins-cannot-reach': (n) =>
    `A disc of ${of(n, 'height_mm', 2)} mm reaches ${of(n, 'most_mg', 1)} mg with the pins at their deepest, below the target of ${of(n, 'target_mg', 1)} mg.`,
  'slug-unknown': (n) =>
    `Whether a slug holds together at ${of(n, 'limit_N', 0)} N is not known: a bench press tells in ten minutes.`,
  'slug-wider-than-body': (n) =>
    `The released slug of ${of(n, 'width_mm', 2)} mm does not enter a body of ${of(n, 'body_mm', 2)} mm inside.`,
};

/** A number of a finding by key with fixed decimals. */
function of(numbers: Numbers, key: string, decimals: number): string {
  const value = numbers[key];
  return plainNumber(typeof value === 'number' ? value : NaN, { decimals });
}

/** What a move of a pin would bring, in a few words; codes that no move can bring are not here. */
export const CONSEQUENCE_WORDS: Readonly<Partial<Record<FindingCode, string>>> = {
  'on-spring': 'a pin on its spring',
  limited: 'a pin that cannot enter',
  'loose-last-refill': 'loose powder on the slug',
  'outside-validated': 'a pin outside the validated range',
  'force-beyond-record': 'a force nothing is known of',
};
