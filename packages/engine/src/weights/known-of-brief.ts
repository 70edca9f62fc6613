import { targetFill } from '#brief';
import type { Brief } from '#design';
import type { Filler } from '#fillers';
import type { Purpose, WeightsInput, WeightTest } from './weights-input.ts';

type Known = Pick<
  WeightsInput,
  'target_mg' | 'limits' | 'tests' | 'route' | 'substances' | 'tare' | 'loadCount' | 'wheel'
>;

/** A brief, its filler, and what its weights are for. */
export interface BriefAndPurpose {
  readonly brief: Brief;
  readonly filler?: Filler;
  readonly purpose: Purpose;
  /** The shell that was filled; left out: the first of the brief. */
  readonly size?: string;
}

/**
 * What a brief says about a column of weights: target, limits, the tests that its route names for the purpose, tare of the
 * shell lot, substances, loads, the filler's wheel.
 *
 * @param given - brief, filler and purpose
 * @returns that part of the input of `weightsJudged`; for release without contents, which the assay of the lot gives, and for a
 *   trial with all tests of the route, none of which gives a verdict
 * @throws DomainError as `targetFill`
 * @source the brief, which repeats the dossier
 */
export function knownOfBrief({ brief, filler, purpose, size }: BriefAndPurpose): Known {
  const [part] = brief.parts;
  const target = targetFill(part.target);
  const isNamed = (use: Purpose): boolean => purpose === 'trial' || use === purpose;
  const tests: WeightTest[] = [...new Set(brief.route.filter(({ use }) => isNamed(use)).map(({ test }) => test))];
  const shell = size === undefined ? brief.shells[0] : brief.shells.find((each) => each.size === size);
  const substances = target.substances.flatMap(({ name, content_pct }) =>
    content_pct === undefined || purpose === 'release' ? [] : [{ name, content_pct, contentAt_mg: target.fill_mg }],
  );
  return {
    ...{ target_mg: target.fill_mg, limits: brief.inProcess, tests, route: tests, loadCount: brief.parts.length },
    ...(substances.length > 0 ? { substances } : {}),
    ...tareOfShell(shell),
    ...(filler ? { wheel: wheelOf(filler) } : {}),
  };
}

function tareOfShell(shell: Brief['shells'][number] | undefined): Pick<Known, 'tare'> {
  if (!shell?.mass_mg) return {};
  const { mean, sd, n } = shell.mass_mg;
  const lot = shell.lot === undefined ? {} : { lot: shell.lot };
  const standardError_mg = sd / Math.sqrt(n);
  return { tare: { mean_mg: mean, sd_mg: sd, shellCount: n, standardError_mg, ...lot, basis: 'measured' } };
}

function wheelOf({ disc, carriers }: Filler): NonNullable<Known['wheel']> {
  return { groupCount: disc.groupCount, columnCount: disc.columnCount, carrierCount: carriers.carrierCount };
}
