import type { Filler } from '#fillers';
import { DOSING_METHODS, type DosingContext, type DosingMethod } from '#dosing';
import { completedPowder } from '#materials';
import { shellGeometry, type ShellRecord } from '#shells';
import type { Brief } from './brief.ts';
import type { Rejection } from './candidate.ts';

export interface SearchInput {
  readonly brief: Brief;
  readonly filler: Filler;
  /** Figures of the shells that the brief names, one for each in its order. */
  readonly shells: readonly ShellRecord[];
  readonly seed: number;
}

/** A shell of the brief and a way of dosing into it. */
export interface Place {
  readonly method: DosingMethod;
  readonly context: DosingContext;
  readonly record: ShellRecord;
  /** Place of the shell in the brief. */
  readonly shellIndex: number;
}

/**
 * Every shell whose geometry is known with every way of dosing; the others with their reason.
 *
 * @param input - brief, filler and shells
 * @returns places in the order of the brief, and rejections of shells that cannot be computed
 * @throws DomainError when the powder contradicts itself
 * @source none: bookkeeping
 */
export function placesOf(input: SearchInput): {
  readonly places: readonly Place[];
  readonly rejections: readonly Rejection[];
} {
  const rejections: Rejection[] = [];
  const places = input.shells.flatMap((record, shellIndex): readonly Place[] => {
    const shell = shellGeometry(record);
    if (shell.kind === 'known')
      return DOSING_METHODS.map((method) => ({ method, context: contextOf(input, shell), record, shellIndex }));
    const numbers = { missing: shell.missing.join(', ') };
    rejections.push({ size: record.size, reason: { code: 'no-geometry', numbers, rule: 'shells.slug-fit' } });
    return [];
  });
  return { places, rejections };
}

function contextOf({ brief, filler }: SearchInput, shell: DosingContext['shell']): DosingContext {
  const recorded = brief.record?.unit_pct;
  return {
    material: completedPowder(brief.parts[0].material),
    filler,
    shell,
    below_mm3: 0,
    ...(brief.validated ? { validated: validatedRanges(brief.validated) } : {}),
    ...(recorded ? { recordedUnit_pct: recorded } : {}),
  };
}

function validatedRanges(validated: NonNullable<Brief['validated']>): NonNullable<DosingContext['validated']> {
  return {
    ...(validated.pinDepth ? { pinDepth: validated.pinDepth } : {}),
    ...(validated.discHeight ? { discHeight: validated.discHeight } : {}),
  };
}
