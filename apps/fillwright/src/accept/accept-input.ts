import type { WeightsRead } from '@fillwright/contract/weights';
import { search, type Brief, type InProcessLimits, type SearchInput } from '@fillwright/engine/design';
import { knownOfBrief, knownOfSetUp, type WeightsInput, type WheelOfRevolution } from '@fillwright/engine/weights';
import { ACCEPT_WORDS, COMMAND_LINE } from '@fillwright/words/en';
import type { AcceptRequest } from './accept-request.ts';
import { givenOnly } from './given-only.ts';

/** A brief as read, with what it names. */
export type KnownBrief = Omit<SearchInput, 'seed'>;

/**
 * The wheel that was jogged: of the brief's filler, or as typed.
 *
 * @param request - the command line
 * @param known - the brief, if one is given
 * @returns the wheel where a revolution is asked for, or what is missing
 */
export function wheelOf(request: AcceptRequest, known: KnownBrief | undefined): WheelOfRevolution | string | undefined {
  if (!request.isRevolution) return undefined;
  const { 'group-count': groupCount, 'column-count': columnCount } = request.figures;
  if (groupCount !== undefined && columnCount !== undefined) return { groupCount, columnCount };
  const { disc } = known?.filler ?? {};
  return disc ? { groupCount: disc.groupCount, columnCount: disc.columnCount } : ACCEPT_WORDS.wheelMissing;
}

/** Everything that was read. */
export interface AcceptSources {
  readonly capsules: WeightsRead;
  readonly shells?: WeightsRead;
  readonly known?: KnownBrief;
  readonly wheel?: WheelOfRevolution;
}

/**
 * Puts together what is judged: figures of the command line come before those of the brief.
 *
 * @param request - the command line
 * @param sources - weights, shells and brief as read
 * @returns the input of `weightsJudged`, or what is missing
 * @throws DomainError as the target of the brief, or as the search for the set-up
 */
export function acceptInput(request: AcceptRequest, sources: AcceptSources): WeightsInput | string {
  const { purpose, figures, rounding, tests } = request;
  const { capsules, known, wheel } = sources;
  const ofBrief: Partial<WeightsInput> = known ? knownOfBrief({ ...known, purpose }) : {};
  const setUp = setUpOf(figures['set-up'], known);
  if (typeof setUp === 'string') return setUp;
  const limits = limitsOf(figures, known?.brief);
  if (typeof limits === 'string') return limits;
  // The filler of a brief is a wheel only where a revolution is asked for.
  const { wheel: _ofFiller, ...ofDossier } = ofBrief;
  return {
    ...{ tests, ...ofDossier, ...setUp, purpose },
    ...{ capsules: capsules.capsules, basis: capsules.basis === 'net' ? 'net' : 'gross' },
    ...(tests.length > 0 ? { tests } : {}),
    ...givenOnly({ target_mg: figures.target_mg, limits, loadCount: figures['load-count'], wheel }),
    ...(rounding === 'half-up' ? { rounding: 'halfUp' } : {}),
    ...givenOnly({ shells_mg: shellsOf(sources) }),
    ...substancesOf(figures, ofBrief.substances, known?.brief),
    unreadCount: capsules.unreadCount,
  };
}

function shellsOf({ capsules, shells }: AcceptSources): readonly number[] | undefined {
  const shells_mg = [...capsules.shells_mg, ...(shells?.shells_mg ?? [])];
  return shells_mg.length > 0 ? shells_mg : undefined;
}

function setUpOf(
  rank: number | undefined,
  known: KnownBrief | undefined,
): Pick<WeightsInput, 'corrections' | 'causes'> | string {
  if (rank === undefined) return {};
  if (!known) return ACCEPT_WORDS.setUpNeedsBrief;
  const input = { ...known, seed: 1 };
  const { candidates } = search(input);
  const candidate = candidates.find((each) => each.rank === rank);
  return candidate ? knownOfSetUp(input, candidate) : COMMAND_LINE.rankTooHigh(rank, candidates.length);
}

function limitsOf(figures: AcceptRequest['figures'], brief: Brief | undefined): InProcessLimits | string | undefined {
  const typed = givenOnly({
    meanAction_pct: figures['mean-action_pct'],
    individualAction_pct: figures['individual-action_pct'],
    individualAlert_pct: figures['individual-alert_pct'],
    sampleCount: figures['sample-count'],
  });
  const limits: Partial<InProcessLimits> = { ...brief?.inProcess, ...typed };
  const { meanAction_pct, individualAction_pct } = limits;
  if (meanAction_pct === undefined && individualAction_pct === undefined) return undefined;
  if (meanAction_pct === undefined || individualAction_pct === undefined) return ACCEPT_WORDS.bothLimits;
  if (!brief && figures.target_mg === undefined) return ACCEPT_WORDS.targetMissing;
  return { ...limits, meanAction_pct, individualAction_pct };
}

/** The assay of the lot holds for every substance of the brief; without a brief there is one without a name. */
function substancesOf(
  figures: AcceptRequest['figures'],
  ofBrief: WeightsInput['substances'],
  brief: Brief | undefined,
): Pick<WeightsInput, 'substances'> {
  const { assay_pct, 'target-content_pct': target_pct } = figures;
  const target = target_pct === undefined ? {} : { target_pct };
  if (assay_pct === undefined) return ofBrief ? { substances: ofBrief.map((each) => ({ ...each, ...target })) } : {};
  const names = brief?.parts[0].target.substances.map(({ name }) => name) ?? [];
  const named = names.length > 0 ? names : [ACCEPT_WORDS.theSubstance];
  return { substances: named.map((name) => ({ name, content_pct: assay_pct, ...target })) };
}
