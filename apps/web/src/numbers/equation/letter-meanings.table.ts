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
  'dosing.tamp-pressure': {
    ...{ P: of('pressures_MPa'), F: of('forces_N', 'force'), D: of('boreDiameter_mm', 'bore-diameter') },
  },
  'dosing.spring-force': {
    ...{ F: of('force_N', 'force'), F_0: of('preload_N'), k: of('rate_N_per_mm') },
    // Values of the two depths come with the reference: the entry takes their difference.
    ...{ x_set: of('set_mm', 'pin-depth'), x: of('reached_mm', 'reached-depth') },
  },
  'dosing.released-slug': {
    ...{ L: of('released_mm', 'slug-length'), H: of('discHeight_mm', 'disc-height'), e_a: of('axialSpringback_pct') },
    ...{ W: of('width_mm', 'slug-width'), D: of('boreDiameter_mm', 'bore-diameter'), e_r: of('radialSpringback_pct') },
    s: of('springback_mm'),
  },
  'dosing.tamped-density': {
    ...{ ρ: of('density_g_per_mL'), M: of('pressed_mg', 'mass-before'), D: of('boreDiameter_mm', 'bore-diameter') },
    ...{ H: of('discHeight_mm', 'disc-height'), x: of('reached_mm', 'reached-depth') },
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
  'statistics.acceptance-value': {
    ...{ AV: of('acceptanceValue_pct'), M: of('reference_pct'), 'bar X': of('mean_pct'), s: of('sd_pct') },
  },
  'statistics.capability-indices': {
    ...{ U: of('upper_data'), L: of('lower_data'), s: of('sd_data'), 'bar x': of('mean_data'), n: of('unitCount') },
  },
  'statistics.assurance-of-sample': { 'bar x': of('mean_pct'), s: of('sd_pct'), n: of('sampleCount') },
  'statistics.net-given-gross': {
    ...{ n: of('mean_data'), μ_N: of('meanNet_data'), σ_N: of('sdNet_data'), g: of('gross_data'), σ: of('sd_data') },
  },
  'design.after-set-up': {
    ...{ P_m: of('sampleMeansOutside_frac'), P_c: of('capsulesOutside_frac'), b: of('setUp_pct') },
    ...{ l_m: of('meanAction_pct'), l_c: of('individualAction_pct') },
    ...{ t: of('betweenTimes_pct'), u: of('unit_pct'), φ: of('strokeShare_frac'), k: of('setUpSampleCount') },
    ...{ n: of('sampleCount'), B: of('boreCount') },
  },
  'design.dosage-units-outlook': {
    ...{ P: of('pass_frac'), 'bar μ': of('mean_pct'), u: of('unit_pct'), v: of('blend_pct'), σ_b: of('bias_pct') },
    ...{ σ: of('sd_pct'), a: of('median_pct') },
  },
  'design.uniformity-of-mass-outlook': { P: of('pass_frac'), 'bar w': of('mean_mg'), u: of('unit_pct') },
  'design.first-weights': {
    ...{ 'g_−': of('grossLow_mg'), 'g_+': of('grossHigh_mg') },
    ...{ 'n_−': of('low_mg'), 'n_+': of('high_mg'), r: of('roundedTo_mg'), 'q_.01': of('low98_mg') },
    ...{ 'q_.99': of('high98_mg'), 'bar t': of('tareMean_mg') },
  },
  'design.half-width': { h: of('half_mg'), 'q_.05': of('low90_mg'), 'q_.95': of('high90_mg') },
  'design.narrowed-width': { h_1: of('narrowed_mg'), h: of('half_mg'), s: of('share_frac') },
  'dosing.unit-spread': { u: of('unit_pct'), u_i: of('causes_pct') },
  'dosing.largest-slug': {
    ...{ W_max: of('mass_mg'), ρ: of('slugDensity_g_per_mL'), D: of('boreDiameter_mm', 'bore-diameter') },
    ...{ L_max: of('longestSlug_mm'), e_a: of('axialSpringback_pct') },
  },
  'dosing.disc-step-gain': {
    ...{ ρ_0: of('feedDensity_g_per_mL'), D: of('boreDiameter_mm'), H: of('discHeight_mm'), p_k: of('depths_mm') },
    ...{ f: of('refill_ratio'), a: of('a_frac'), b: of('b_per_MPa'), F_0: of('preload_N'), k_s: of('rate_N_per_mm') },
    ...{ ρ_i: of('initialDensity_g_per_mL'), s: of('step_mm') },
  },
  'dosing.disc-part-change': {
    ...{ ρ_0: of('feedDensity_g_per_mL'), D: of('boreDiameter_mm'), H: of('discHeight_mm', 'disc-height') },
    ...{ F_0: of('preload_N'), k_s: of('rate_N_per_mm'), W_1: of('before_mg'), W_2: of('after_mg') },
    ...{
      w: of('change_mg'),
      H_2: of('discHeightNext_mm'),
      D_2: of('boreDiameterNext_mm'),
      F_2: of('preloadNext_N'),
      k_2: of('rateNext_N_per_mm'),
      f: of('refill_ratio'),
    },
  },
  'shells.slug-margin': {
    ...{ s: of('free_mm'), L_max: of('longestSlug_mm'), L: of('released_mm', 'slug-length') },
  },
  'shells.slug-above-rim': {
    ...{ s: of('aboveRim_mm'), dead: of('dead_mm', 'dead-space'), L: of('released_mm', 'slug-length') },
    ...{ L_b: of('bodyLength_mm', 'body-length'), t: of('bodyWall_mm') },
  },
  'shells.free-on-axis': {
    ...{ s: of('free_mm'), h: of('capHeadroom_mm', 'cap-headroom'), s_r: of('aboveRim_mm') },
  },
  'shells.dead-volume': {
    ...{ V: of('volume_mm3'), dead: of('dead_mm', 'dead-space'), r_i: of('bodyInnerRadius_mm', 'body-radius') },
  },
};
