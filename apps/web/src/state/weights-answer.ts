import { DomainError } from '@fillwright/engine/catalogue';
import { weightsJudged, type WeightsInput, type WeightsJudgement } from '@fillwright/engine/weights';
import { readWeights, type WeightsRead } from '@fillwright/contract/weights';
import type { WeightsAnswer, WeightsFacts, WeightsQuestion } from './weights-calls.ts';

/**
 * Reads texts of weights and shells, and judges them where both can be read.
 *
 * @param question - the texts, and what is known
 * @returns every line, and the judgement or why there is none
 */
export function weightsAnswer({ weights, shells, facts }: WeightsQuestion): WeightsAnswer {
  const read = readWeights(weights);
  const shellsRead = shells && readWeights(shells);
  const both = { read, ...(shellsRead ? { shellsRead } : {}) };
  const areSound = read.faults.length === 0 && (shellsRead?.faults.length ?? 0) === 0;
  if (!areSound || read.capsules.length === 0) return both;
  try {
    return { ...both, judgement: judged(inputOf(both, facts), facts.contentAt_mg) };
  } catch (error) {
    if (!(error instanceof DomainError)) throw error;
    return { ...both, refused: { code: error.code, facts: error.facts } };
  }
}

function inputOf(
  { read, shellsRead }: { readonly read: WeightsRead; readonly shellsRead?: WeightsRead },
  { contentAt_mg: _at, ...facts }: WeightsFacts,
): WeightsInput {
  const shells_mg = shellsRead ? shellsRead.shells_mg : read.shells_mg;
  return {
    ...facts,
    capsules: read.capsules,
    basis: read.basis === 'net' ? 'net' : 'gross',
    ...(shells_mg.length > 0 ? { shells_mg } : {}),
    unreadCount: read.unreadCount + (shellsRead?.unreadCount ?? 0),
  };
}

/** A content that belongs to the target goes with the mean that was found. */
function judged(input: WeightsInput, contentAt_mg: number | undefined): WeightsJudgement {
  if (contentAt_mg === undefined || !input.substances) return weightsJudged(input);
  const mean_mg = weightsJudged({ ...input, tests: [], route: [] }).net?.mean.value_mg;
  if (mean_mg === undefined) return weightsJudged(input);
  const substances = input.substances.map((substance) => ({
    ...substance,
    content_pct: (substance.content_pct * mean_mg) / contentAt_mg,
  }));
  return weightsJudged({ ...input, substances });
}
