import { requireWithin, StatsError } from '#elementary';
import { contentsByMass } from './contents-by-mass.ts';
import type { DosageUnitJudgement, DosageUnitRules } from './uniformity-of-dosage-units.ts';
import { judgedDosageUnits } from './uniformity-of-dosage-units.ts';

/** The 10 filled capsules of stage 1 with their emptied shells, the 20 of stage 2, and the assay of the batch. */
export interface DosageUnitMasses extends DosageUnitRules {
  readonly gross: readonly number[];
  readonly shells: readonly number[];
  readonly furtherGross?: readonly number[];
  readonly furtherShells?: readonly number[];
  readonly assay_pct: number;
}

/**
 * Uniformity of dosage units by mass variation of hard capsules: `uniformityOfDosageUnits` on contents by mass. Stage 2
 * relates all 30 net masses to their own mean.
 *
 * @param sample - gross, shells: 10 each; furtherGross, furtherShells: 20 each; assay_pct: of the batch, % of claim; rules as
 *   for `uniformityOfDosageUnits`
 * @returns verdict, reasons, what follows, and the arithmetic of each stage; "cannot-tell" also for several loads in one capsule
 * @throws StatsError "not-finite", "out-of-range" (assay, target, limits, loadCount)
 * @source Ph. Eur. 2.9.40, USP <905>, JP 6.02: mass (weight) variation, hard capsules
 * @validity where the dossier allows it: `dosageUnitMethod` gives the thresholds; one load of uniform concentration
 */
export function uniformityOfDosageUnitsByMass(sample: DosageUnitMasses): DosageUnitJudgement {
  const { gross, shells, furtherGross, furtherShells, assay_pct } = sample;
  requireWithin({ assay_pct }, { above: 0 });
  const further = furtherGross ?? furtherShells;
  const found = (masses: Masses): readonly number[] => contentsOrNothing({ ...masses, assay_pct });
  return judgedDosageUnits('dosage-units-by-mass', sample, {
    contents: found({ gross, shells }),
    allContents:
      further && found({ gross: [...gross, ...(furtherGross ?? [])], shells: [...shells, ...(furtherShells ?? [])] }),
  });
}

interface Masses {
  readonly gross: readonly number[];
  readonly shells: readonly number[];
}

/** Weighings that give no contents become NaN, of which the judgement says why: the wrong number, or not a number. */
function contentsOrNothing(weighed: Masses & { readonly assay_pct: number }): readonly number[] {
  try {
    return contentsByMass(weighed).contents;
  } catch (error) {
    if (!(error instanceof StatsError)) throw error;
    const { gross, shells } = weighed;
    return gross.length === shells.length ? gross.map(() => NaN) : [];
  }
}
