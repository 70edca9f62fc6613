import { targetFill, type TargetFill } from '#brief';
import type { Prediction } from '#dosing';
import type { Candidate, Design, Rejection } from './candidate.ts';
import { candidateAt } from './candidate-at.ts';
import { detailsOf } from './details-of.ts';
import { paretoFront } from './pareto-front.ts';
import { placesOf, type Place, type SearchInput } from './place.ts';
import { ranking } from './ranking.ts';

/**
 * Searches all shells, ways of dosing and parts in stock for set-ups that give the target, and ranks them.
 *
 * @param input - the brief, its filler and shells, and the seed of the parameter draws
 * @returns the first Pareto front in order, with set-up sheet, limit card, forecast and outlook; the rest; every rejection
 * @throws DomainError when the target cannot be set (see `targetFill`) or the powder contradicts itself
 * @source see the entries of the rooms; ranking after set-up, not by the ignorance before the first trial
 * @validity a first set-up for a trial; the registered dossier and qualified people decide
 */
export function search(input: SearchInput): Design {
  const { brief, filler, seed } = input;
  const target = targetFill(brief.parts[0].target);
  const { places, rejections: unknown } = placesOf(input);
  const rejections: Rejection[] = [...unknown];
  const found = places.flatMap((place) => candidatesAt(input, { place, target, rejections }));
  const kept = rigidFirst(found, rejections);
  const front = [...paretoFront(kept.map(({ candidate }) => candidate))].sort((a, b) => ranking(a, b).order);
  return {
    format: 1,
    product: { code: brief.product.code, name: brief.product.name },
    filler: { id: filler.id, name: filler.name },
    seed,
    target,
    candidates: front.map((candidate, i) => {
      const next = front[i + 1];
      const at = kept.find((one) => one.candidate === candidate);
      if (!at) throw new Error('a ranked candidate was not found again');
      const decided = next ? { decidedBy: ranking(candidate, next).by } : {};
      return { ...candidate, ...detailsOf(input, at.place, { candidate, target }), rank: i + 1, ...decided };
    }),
    behind: kept.map(({ candidate }) => candidate).filter((candidate) => !front.includes(candidate)),
    rejections,
  };
}

interface Found {
  readonly candidate: Candidate;
  readonly place: Place;
}

/** Where a slug stays whole in any of them, the ones that go in only by crumbling are rejected. */
function rigidFirst(found: readonly Found[], rejections: Rejection[]): readonly Found[] {
  const rigid = found.filter(({ candidate }) => candidate.prediction.fit === 'rigid');
  if (rigid.length === 0) return found;
  for (const { candidate } of found) {
    const { fit, released_mm, longest_mm } = candidate.prediction;
    if (fit === 'rigid') continue;
    const reason = { code: 'by-crumbling', numbers: { released_mm, longest_mm }, rule: 'shells.slug-fit' } as const;
    rejections.push({ size: candidate.size, method: candidate.method, parts: candidate.settings.parts, reason });
  }
  return rigid;
}

function candidatesAt(
  input: SearchInput,
  at: { place: Place; target: TargetFill; rejections: Rejection[] },
): readonly Found[] {
  const { place, target, rejections } = at;
  const { method, context, record } = place;
  const { size } = record;
  const suitability = method.accepts(context);
  if (suitability.grade === 'unsuitable') {
    rejections.push(...suitability.reasons.map((reason) => ({ size, method: method.id, reason })));
    return [];
  }
  return method.solve(context, target.fill_mg).flatMap((solution): readonly Found[] => {
    if (solution.kind === 'unsolved') {
      rejections.push({ size, method: method.id, parts: solution.parts, reason: solution.reason });
      return [];
    }
    const candidate = candidateAt(input, place, solution.settings);
    const reason = unfit(candidate.prediction);
    if (!reason) return [{ candidate, place }];
    rejections.push({ size, method: method.id, parts: solution.settings.parts, reason });
    return [];
  });
}

function unfit(prediction: Prediction): Rejection['reason'] | undefined {
  const { fit, released_mm, longest_mm } = prediction;
  if (fit === 'does-not-fit') return { code: fit, numbers: { released_mm, longest_mm }, rule: 'shells.slug-fit' };
  return prediction.warnings.find(({ code }) => code === 'slug-wider-than-body');
}
