import { isSizeMounted } from '#fillers';
import type { Prediction, Settings } from '#dosing';
import { afterSetUp, type AfterSetUp } from './after-set-up.ts';
import { betweenTimesOf } from './between-times.ts';
import type { Candidate } from './candidate.ts';
import { DEFAULT_SAMPLE_COUNT } from './limit-card.ts';
import { meritsOf } from './merits.ts';
import type { Place, SearchInput } from './place.ts';

/**
 * What any settings give in one shell: prediction, shares outside after set-up, merits. Cheap enough for a lever.
 *
 * @param input - brief and filler
 * @param place - shell and way of dosing
 * @param settings - parts and values, wherever they stand
 * @returns the candidate; it need not give the target
 * @throws DomainError as the method's prediction (a part that is not in stock, a value out of reach)
 * @source see the entries of the rooms
 * @validity a first set-up for a trial; the registered dossier and qualified people decide
 */
export function candidateAt(input: SearchInput, place: Place, settings: Settings): Candidate {
  const { method, context, record } = place;
  const prediction = method.predict(context, settings);
  const set = afterSetUpOf(input, prediction);
  const isSizeChange = !isSizeMounted(context.filler, record.size);
  return {
    size: record.size,
    geometry: context.shell,
    method: method.id,
    suitability: method.accepts(context),
    settings,
    prediction,
    afterSetUp: set,
    merits: meritsOf({ method, context, settings, prediction, afterSetUp: set, isSizeChange }),
  };
}

function afterSetUpOf({ brief, filler }: SearchInput, { spread }: Prediction): AfterSetUp {
  const stroke = spread.components.filter(({ sharedBy }) => sharedBy === 'stroke');
  const stroke_pct2 = stroke.reduce((sum, { sd_pct }) => sum + sd_pct * sd_pct, 0);
  return afterSetUp({
    unit: { mean_pct: spread.unit_pct, sd_pct: spread.unsure_pct },
    strokeShare_frac: stroke_pct2 / (spread.unit_pct * spread.unit_pct),
    betweenTimes: betweenTimesOf(brief),
    sampleCount: brief.inProcess.sampleCount ?? DEFAULT_SAMPLE_COUNT,
    boreCount: filler.carriers.boreCount,
    setUpSampleCount: brief.record?.setUpSampleCount ?? 1,
    limits: brief.inProcess,
  });
}
