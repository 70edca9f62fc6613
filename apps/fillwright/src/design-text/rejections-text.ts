import type { Design, Rejection } from '@fillwright/engine/design';
import { DESIGN_WORDS, findingSentence } from '@fillwright/words/en';
import { wrapped } from '../layout.ts';

/**
 * Why what is not in the ranking is not: one sentence with its number for each kind of reason in each shell.
 *
 * @param design - the result
 * @param isEach - one line for every set of parts instead
 * @returns the lines; empty when nothing was rejected
 */
export function rejectionsText(design: Design, isEach: boolean): string {
  if (design.rejections.length === 0) return '';
  const title = design.candidates.length === 0 ? DESIGN_WORDS.nothing : DESIGN_WORDS.others;
  const groups = new Map<string, Rejection[]>();
  for (const rejection of design.rejections) {
    const key = isEach ? JSON.stringify(rejection) : `${rejection.size} ${rejection.reason.code}`;
    groups.set(key, [...(groups.get(key) ?? []), rejection]);
  }
  return [title, ...[...groups.values()].map(told)].join('\n');
}

function told(alike: readonly Rejection[]): string {
  const nearest = nearestOf(alike);
  const parts = nearest.parts ? Object.values(nearest.parts).join(' ') : '';
  const label = `  ${DESIGN_WORDS.inSize(nearest.size)}${parts === '' ? '' : `, ${parts}`}: `;
  const more = alike.length > 1 ? ` ${DESIGN_WORDS.andMore(alike.length - 1)}` : '';
  return wrapped(label, findingSentence(nearest.reason) + more);
}

/** The rejection that was closest to being none: the mass nearest to the target, the least depth, the shortest slug. */
function nearestOf(alike: readonly Rejection[]): Rejection {
  const miss = ({ reason: { numbers } }: Rejection): number => {
    const value = (key: string): number => (typeof numbers[key] === 'number' ? numbers[key] : 0);
    return (
      Math.abs((value('most_mg') || value('flush_mg')) - value('target_mg')) + value('depth_mm') + value('released_mm')
    );
  };
  return [...alike].sort((a, b) => miss(a) - miss(b))[0] ?? (alike[0] as Rejection);
}
