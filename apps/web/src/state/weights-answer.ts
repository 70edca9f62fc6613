import { DomainError } from '@fillwright/engine/catalogue';
import { cardOfShells, weightsJudged, type WeightsInput } from '@fillwright/engine/weights';
import { readWeights, type WeightsRead } from '@fillwright/contract/weights';
import type { WeightsAnswer, WeightsFacts, WeightsQuestion } from './weights-calls.ts';

/**
 * Reads texts of weights and shells, and judges them where both can be read.
 *
 * @param question - the texts, and what is known
 * @returns every line, and the judgement or why there is none; of shells alone the limit card
 */
export function weightsAnswer({ weights, shells, facts }: WeightsQuestion): WeightsAnswer {
  const [read, shellsRead] = [weights && readWeights(weights), shells && readWeights(shells)];
  const both = { ...(read ? { read } : {}), ...(shellsRead ? { shellsRead } : {}) };
  const faultCount = (read?.faults.length ?? 0) + (shellsRead?.faults.length ?? 0);
  if (faultCount > 0) return both;
  try {
    return { ...both, ...saidOf({ read, shellsRead }, facts) };
  } catch (error) {
    if (!(error instanceof DomainError)) throw error;
    return { ...both, refused: { code: error.code, facts: error.facts } };
  }
}

interface Texts {
  readonly read: WeightsRead | undefined;
  readonly shellsRead: WeightsRead | undefined;
}

/** Of capsules the judgement, of shells alone their limit card. */
function saidOf({ read, shellsRead }: Texts, facts: WeightsFacts): Pick<WeightsAnswer, 'judgement' | 'card'> {
  if (read && read.capsules.length > 0) return { judgement: weightsJudged(inputOf({ read, shellsRead }, facts)) };
  const card = cardOfShells(facts, (shellsRead ?? read)?.shells_mg ?? []);
  return card ? { card } : {};
}

function inputOf(
  { read, shellsRead }: { readonly read: WeightsRead; readonly shellsRead: WeightsRead | undefined },
  facts: WeightsFacts,
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
