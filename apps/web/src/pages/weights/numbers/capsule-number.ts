import { OPEN_NUMBER_WORDS, WEIGHTS_PAGE_WORDS, WEIGHTS_VERDICT_WORDS } from '@fillwright/words/en';
import type { NumberReference } from '../../../numbers/index.ts';
import type { Weighed } from './weighed.ts';

/** Place of a capsule among the weights, from 0: no unit. */
type CapsuleIndex = number;
/** On the balance. */
type Mass_mg = number;

const words = WEIGHTS_VERDICT_WORDS.numbers;
const mg = WEIGHTS_PAGE_WORDS.mg;
const FOUND = { words: words.origins.found };
const OF_BRIEF = { words: OPEN_NUMBER_WORDS.origins.dossier };
const ORIGINS = {
  ...{ meanNet_data: FOUND, sdNet_data: FOUND, meanShell_data: FOUND, sdShell_data: FOUND },
  ...{ gross_data: { words: words.origins.pasted }, netLow_data: OF_BRIEF, netHigh_data: OF_BRIEF },
};

/**
 * How the net mass of one capsule was made; with a mean tare also what is the best guess of it.
 *
 * @param weighed - masses and judgement
 * @param index - of the capsule
 * @returns the reference
 */
export function capsuleNumber(weighed: Weighed, index: CapsuleIndex): NumberReference {
  const { judgement, masses_mg } = weighed;
  const gross_data = masses_mg[index] ?? NaN;
  const given = { unit: 'mg', title: words.capsule(index + 1), value: judgement.net_mg?.[index] ?? gross_data };
  return (
    bestGuess(weighed, gross_data, given) ?? {
      ...{ entry: '', inputs: {}, output: '', ...given },
      remark: remarkOf(weighed, index),
    }
  );
}

type Given = Pick<NumberReference, 'unit' | 'title' | 'value'>;

/** With a mean tare, and a spread of the fill that can be told from that of the shells. */
function bestGuess({ judgement }: Weighed, gross_data: Mass_mg, given: Given): NumberReference | undefined {
  const { net, netFrom, card } = judgement;
  const { way, netSd_mg, tareMean_mg, tareSd_mg } = netFrom;
  if (way !== 'mean-tare' || !net || !netSd_mg || tareMean_mg === undefined || tareSd_mg === undefined)
    return undefined;
  const limits = card?.individualAction;
  return {
    entry: 'statistics.net-given-gross',
    inputs: {
      ...{ meanNet_data: net.mean.value_mg, sdNet_data: netSd_mg, meanShell_data: tareMean_mg },
      ...{ sdShell_data: tareSd_mg, gross_data },
      ...(limits ? { netLow_data: limits.netLow_mg, netHigh_data: limits.netHigh_mg } : {}),
    },
    ...{ output: 'plainEstimate_data', ...given, remark: words.remarks.best(mg(tareMean_mg)), origins: ORIGINS },
  };
}

function remarkOf({ judgement: { netFrom }, masses_mg, ownShells_mg }: Weighed, index: CapsuleIndex): string {
  const { way, tareMean_mg } = netFrom;
  const own_mg = way === 'own-shell' ? ownShells_mg?.[index] : undefined;
  if (own_mg !== undefined) return words.remarks.ownShell({ gross: mg(masses_mg[index] ?? NaN), shell: mg(own_mg) });
  return way === 'mean-tare' && tareMean_mg !== undefined
    ? words.remarks.lessTare(mg(tareMean_mg))
    : words.remarks.asGiven;
}
