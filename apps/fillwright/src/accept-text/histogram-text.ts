import type { WeightsJudgement } from '@fillwright/engine/weights';
import { ACCEPT_WORDS } from '@fillwright/words/en';
import { fixed } from '../design-text/shown.ts';

/** A limit this close to an edge, in bars, is on it. */
const ROUNDING = 1e-6;
/** Longest bar, in signs. */
const WIDTH = 60;
/** Empty bars in a row beyond these are one line. */
const MOST_EMPTY = 3;

/**
 * Bars of the net masses with the limits between them.
 *
 * @param judgement - with bars, or without
 * @returns one line a bar, from light to heavy
 */
export function histogramText({ histogram }: WeightsJudgement): string {
  if (!histogram) return '';
  const { low_mg, width_mg, counts, limits } = histogram;
  const highest = Math.max(...counts);
  const perSign = Math.max(1, highest / WIDTH);
  const decimals = width_mg < 0.1 ? 2 : 1;
  const limitsAt = (from_mg: number, to_mg: number): string[] =>
    limits
      .filter(({ net_mg }) => net_mg > from_mg + ROUNDING * width_mg && net_mg <= to_mg + ROUNDING * width_mg)
      .map(({ kind, net_mg }) => `  ${'-'.repeat(10)} ${ACCEPT_WORDS.limitNames[kind]} ${fixed(net_mg)} mg`);
  const lines: string[] = [];
  let emptyCount = 0;
  for (const [i, count] of counts.entries()) {
    const from_mg = low_mg + i * width_mg;
    const edge = limitsAt(i === 0 ? -Infinity : from_mg - width_mg, from_mg);
    emptyCount = count === 0 && edge.length === 0 ? emptyCount + 1 : 0;
    lines.push(...edge);
    if (emptyCount === MOST_EMPTY + 1) lines.push(`  ${':'.padStart(9)}`);
    if (emptyCount > MOST_EMPTY) continue;
    const bar = '#'.repeat(Math.ceil(count / perSign));
    lines.push(`  ${fixed(from_mg, decimals).padStart(9)} |${bar}${count > 0 ? ` ${count}` : ''}`);
  }
  const end_mg = low_mg + counts.length * width_mg;
  return [ACCEPT_WORDS.histogram, ...lines, ...limitsAt(end_mg - width_mg, Infinity)].join('\n');
}
