import type { LetterPlace } from '../number-reference.ts';

/** What a letter of an entry's equation stands for: key of an input or output, and where the drawing shows it. */
export interface LetterMeaning {
  readonly key: string;
  readonly place?: LetterPlace;
}

const of = (key: string, place?: LetterPlace): LetterMeaning => (place === undefined ? { key } : { key, place });

/**
 * Letters of the equations that the bench opens, spelt as `symbolText` does. The catalogue explains its letters by the
 * titles of the fields; here they are tied to them. `k` is the station; lines of the station model: `disc-equation.ts`.
 */
export const LETTER_MEANINGS: Readonly<Record<string, Readonly<Record<string, LetterMeaning>>>> = {
  'brief.substance-mass': {
    ...{ m: of('mass_mg'), c: of('claim_mg'), f: of('saltFactor_ratio'), o: of('overage_pct') },
    ...{ a: of('assayAnhydrous_pct'), w: of('water_pct') },
  },
  'brief.fill-following-assay': {
    ...{ W: of('fill_mg'), c: of('claim_mg'), f: of('saltFactor_ratio'), o: of('overage_pct'), l: of('blendLoad_pct') },
  },
  'brief.content-of-fixed-fill': {
    ...{ x: of('content_pct'), W: of('fill_mg'), l: of('blendLoad_pct'), c: of('claim_mg'), f: of('saltFactor_ratio') },
  },
  'brief.diluent-of-fixed-total': {
    ...{ m_d: of('diluent_mg'), W: of('total_mg'), m_i: of('substances_mg'), m_e: of('otherExcipients_mg') },
  },
  'materials.flow-indices': {
    ...{ CI: of('compressibilityIndex_pct'), H: of('hausner_ratio') },
    ...{ ρ_t: of('tappedDensity_g_per_mL'), ρ_b: of('bulkDensity_g_per_mL') },
  },
  'fillers.depth-of-reading': {
    ...{ p: of('depth_mm', 'pin-depth'), H: of('discHeight_mm', 'disc-height'), H_0: of('zeroDiscHeight_mm') },
    ...{ q: of('pitch_mm_per_division'), r: of('reading_division'), r_0: of('zeroReading_division') },
  },
  'shells.slug-fit': {
    ...{ dead: of('dead_mm', 'dead-space'), proud: of('proud_mm', 'proud'), longest: of('longestSlug_mm') },
    ...{ r_s: of('boreRadius_mm', 'slug-width'), r_i: of('bodyInnerRadius_mm', 'body-radius') },
    ...{ r_c: of('capInnerRadius_mm', 'cap-radius'), h: of('capHeadroom_mm', 'cap-headroom') },
    ...{ L: of('bodyLength_mm', 'body-length'), t: of('bodyWall_mm') },
  },
  'dosing.disc-stations': {
    ...{ ρ_0: of('feedDensity_g_per_mL'), D: of('boreDiameter_mm'), H: of('discHeight_mm'), p_k: of('depths_mm') },
    ...{ f: of('refill_ratio'), c_k: of('captured_mg'), a: of('a_frac'), b: of('b_per_MPa') },
    ...{ ρ_i: of('initialDensity_g_per_mL'), F_0: of('preload_N'), k_s: of('rate_N_per_mm') },
  },
  'dosing.disc-recurrence': {
    ...{ ρ_0: of('feedDensity_g_per_mL'), D: of('boreDiameter_mm'), H: of('discHeight_mm'), p_k: of('depths_mm') },
    f: of('refills_ratio'),
  },
  'dosing.disc-pin-gain': {
    ...{ ρ_0: of('feedDensity_g_per_mL'), D: of('boreDiameter_mm'), f: of('refill_ratio') },
  },
  'dosing.tamp-pressure': {
    ...{ P: of('pressures_MPa'), F: of('forces_N', 'force'), D: of('boreDiameter_mm', 'bore-diameter') },
  },
  'dosing.spring-force': { F: of('force_N', 'force'), F_0: of('preload_N'), k: of('rate_N_per_mm') },
  'dosing.released-slug': {
    ...{ L: of('released_mm', 'slug-length'), H: of('discHeight_mm', 'disc-height'), e_a: of('axialSpringback_pct') },
    ...{ W: of('width_mm', 'slug-width'), D: of('boreDiameter_mm', 'bore-diameter'), e_r: of('radialSpringback_pct') },
  },
  'dosing.loose-refill': {
    ...{ s: of('loose_mm'), x_n: of('reached_mm', 'reached-depth'), H: of('discHeight_mm', 'disc-height') },
    e: of('axialSpringback_pct'),
  },
  'design.limits': {
    ...{
      W: of('target_mg'),
      l: of('limit_pct'),
      'bar t': of('tareMean_mg'),
      s_t: of('tareSd_mg'),
      m: of('shellCount'),
    },
    SE_t: of('tareStandardError_mg'),
  },
  'design.after-set-up': {
    ...{ t: of('betweenTimes_pct'), u: of('unit_pct'), φ: of('strokeShare_frac'), k: of('setUpSampleCount') },
    ...{ n: of('sampleCount'), B: of('boreCount') },
  },
  'statistics.acceptance-value-quantiles': {
    ...{ p: of('probabilities_frac'), q_p: of('acceptanceValues_pct'), 'bar μ': of('mean_pct'), σ_b: of('biasSd_pct') },
  },
};
