import { fisherSurvival } from '#distributions';
import { requireWithin, StatsError } from '#elementary';

/** One line of the analysis of variance. */
export interface GaugeLine {
  readonly sumOfSquares: number;
  readonly degreesOfFreedom: number;
  readonly meanSquare: number;
}

/** Spreads of a gauge study; variances as they come out, standard deviations with negative ones as 0. */
export interface GaugeComponents {
  readonly varianceRepeatability: number;
  readonly varianceInteraction: number;
  readonly varianceAppraiser: number;
  readonly variancePart: number;
  readonly equipment: number;
  /** Appraisers with their interaction. */
  readonly appraiser: number;
  readonly gauge: number;
  readonly part: number;
  readonly total: number;
  /** Share of the study variation, per cent; nothing varies: undefined. */
  readonly gaugeOfStudy_pct: number | undefined;
  readonly gaugeContribution_pct: number | undefined;
  /** Share of the width of the tolerance. */
  readonly gaugeOfTolerance_pct: number | undefined;
  /** 1.41 part/gauge before rounding down; undefined when the gauge does not vary. */
  readonly categories: number | undefined;
  /** Tests of parts and appraisers; undefined when the mean square below is 0. */
  readonly fPart: number | undefined;
  readonly fAppraiser: number | undefined;
  readonly meanSquareError: number;
}

export interface CrossedGauge {
  readonly parts: GaugeLine;
  readonly appraisers: GaugeLine;
  readonly interaction: GaugeLine;
  readonly repeatability: GaugeLine;
  readonly fInteraction: number | undefined;
  readonly pInteraction: number | undefined;
  readonly withInteraction: GaugeComponents;
  readonly pooled: GaugeComponents;
  /** The interaction is pooled with the error: its p is above the level for pooling. */
  readonly isPooled: boolean;
}

interface Study {
  readonly partCount: number;
  readonly appraiserCount: number;
  readonly trialCount: number;
  readonly studyFactor: number;
  readonly tolerance: number | undefined;
}

/**
 * Crossed study of a gauge by analysis of variance: every appraiser measures every part, the same number of times.
 *
 * @param input - cells[part][appraiser][trial]: two of each at least; tolerance: width between the limits; studyFactor: 6 unless
 *   given (older texts 5.15), it counts against the tolerance only; poolingLevel: 0.25 unless given
 * @returns lines of the analysis, components with the interaction kept and pooled, which of the two holds
 * @throws StatsError "sample-size", "wrong-length", "not-finite", "out-of-range"
 * @source AIAG, Measurement Systems Analysis, ANOVA method (from memory; its printed example is reproduced)
 * @validity balanced; parts drawn from the process; the same part can be measured again (not destroyed)
 */
export function crossedGauge(input: {
  readonly cells: readonly (readonly (readonly number[])[])[];
  readonly tolerance?: number;
  readonly studyFactor?: number;
  readonly poolingLevel?: number;
}): CrossedGauge {
  const { cells, tolerance, studyFactor = 6, poolingLevel = 0.25 } = input;
  requireWithin({ studyFactor }, { above: 0 });
  if (tolerance !== undefined) requireWithin({ tolerance }, { above: 0 });
  requireWithin({ poolingLevel }, { min: 0, max: 1 });
  const study = { ...requireBalanced(cells), studyFactor, tolerance };
  const lines = analysis(cells, study);
  const { interaction, repeatability } = lines;
  const fInteraction = ratio(interaction.meanSquare, repeatability.meanSquare);
  const pInteraction =
    fInteraction === undefined
      ? undefined
      : fisherSurvival({
          ...{ x: fInteraction, numeratorDf: interaction.degreesOfFreedom },
          denominatorDf: repeatability.degreesOfFreedom,
        });
  const pooledError =
    (interaction.sumOfSquares + repeatability.sumOfSquares) /
    (interaction.degreesOfFreedom + repeatability.degreesOfFreedom);
  return {
    ...{ ...lines, fInteraction, pInteraction },
    withInteraction: components({ ...lines, study, error: repeatability.meanSquare, tested: interaction.meanSquare }),
    pooled: components({ ...lines, study, error: pooledError, tested: pooledError }),
    isPooled: pInteraction !== undefined && pInteraction > poolingLevel,
  };
}

function requireBalanced(cells: readonly (readonly (readonly number[])[])[]) {
  const partCount = cells.length;
  const appraiserCount = cells[0]?.length ?? 0;
  const trialCount = cells[0]?.[0]?.length ?? 0;
  const least = Math.min(partCount, appraiserCount, trialCount);
  if (least < 2) throw new StatsError('sample-size', { partCount, appraiserCount, trialCount, min: 2 });
  cells.forEach((row, part) => {
    if (row.length !== appraiserCount)
      throw new StatsError('wrong-length', { part: part + 1, appraisers: row.length, appraiserCount });
    row.forEach((cell, appraiser) => {
      if (cell.length !== trialCount)
        throw new StatsError('wrong-length', {
          ...{ part: part + 1, appraiser: appraiser + 1, trials: cell.length, trialCount },
        });
      for (const value of cell) requireWithin({ value });
    });
  });
  return { partCount, appraiserCount, trialCount };
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}

function squaresAround(values: readonly number[], centre: number): number {
  return values.reduce((sum, value) => sum + (value - centre) * (value - centre), 0);
}

function line(sumOfSquares: number, degreesOfFreedom: number): GaugeLine {
  return { sumOfSquares, degreesOfFreedom, meanSquare: sumOfSquares / degreesOfFreedom };
}

function analysis(cells: readonly (readonly (readonly number[])[])[], study: Study) {
  const { partCount: p, appraiserCount: o, trialCount: r } = study;
  const cellMeans = cells.map((row) => row.map(mean));
  const partMeans = cellMeans.map(mean);
  const appraiserMeans = Array.from({ length: o }, (_, j) => mean(cellMeans.map((row) => row[j]!)));
  const grand = mean(partMeans);
  const own = cellMeans.flatMap((row, i) => row.map((value, j) => value - partMeans[i]! - appraiserMeans[j]! + grand));
  const within = cells.flatMap((row, i) => row.map((cell, j) => squaresAround(cell, cellMeans[i]![j]!)));
  return {
    parts: line(o * r * squaresAround(partMeans, grand), p - 1),
    appraisers: line(p * r * squaresAround(appraiserMeans, grand), o - 1),
    interaction: line(r * squaresAround(own, 0), (p - 1) * (o - 1)),
    repeatability: line(
      within.reduce((sum, value) => sum + value, 0),
      p * o * (r - 1),
    ),
  };
}

function ratio(above: number, below: number): number | undefined {
  return below > 0 ? above / below : undefined;
}

function components(from: {
  readonly parts: GaugeLine;
  readonly appraisers: GaugeLine;
  readonly error: number;
  /** Mean square against which parts and appraisers are tested. */
  readonly tested: number;
  readonly study: Study;
}): GaugeComponents {
  const { parts, appraisers, error, tested, study } = from;
  const { partCount: p, appraiserCount: o, trialCount: r, tolerance } = study;
  const varianceInteraction = (tested - error) / r;
  const varianceAppraiser = (appraisers.meanSquare - tested) / (p * r);
  const variancePart = (parts.meanSquare - tested) / (o * r);
  const reproducibility = Math.max(0, varianceAppraiser) + Math.max(0, varianceInteraction);
  const gauge = Math.sqrt(error + reproducibility);
  const part = Math.sqrt(Math.max(0, variancePart));
  const total = Math.sqrt(gauge * gauge + part * part);
  const ofStudy = ratio(gauge, total);
  return {
    ...{ varianceRepeatability: error, varianceInteraction, varianceAppraiser, variancePart },
    ...{ equipment: Math.sqrt(error), appraiser: Math.sqrt(reproducibility), gauge, part, total },
    gaugeOfStudy_pct: ofStudy === undefined ? undefined : 100 * ofStudy,
    gaugeContribution_pct: ofStudy === undefined ? undefined : 100 * ofStudy * ofStudy,
    gaugeOfTolerance_pct: tolerance === undefined ? undefined : (100 * study.studyFactor * gauge) / tolerance,
    categories: ratio(1.41 * part, gauge),
    fPart: ratio(parts.meanSquare, tested),
    fAppraiser: ratio(appraisers.meanSquare, tested),
    meanSquareError: error,
  };
}
