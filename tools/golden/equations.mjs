/**
 * Which method computes an equation of a reference file, and how its inputs are called there. `inputs` maps the file's names to
 * the method's keys; `outputs` are the keys in the order of the expected values; `idle` are names that only describe the case, as
 * `size` does wherever no input is called so; `read` cleans a value up; a key in `lists` takes a single value as a list;
 * `inUnitOf` names the input that holds the unit of others. No rule knows an individual case.
 */

/** A grade as the methods spell it. */
export function lower(text) {
  if (typeof text !== 'string') return text;
  const words = text
    .trim()
    .toLowerCase()
    .replace(/[\s_]+/g, ' ');
  return words.replace(/^very very/, 'very, very');
}
const same = (...keys) => Object.fromEntries(keys.map((key) => [key, key]));
const GRADE = { inputs: same('grade'), read: { grade: lower } };
const BODY = {
  bodyLength_mm: 'bodyLength_mm',
  bodyOD_mm: 'bodyOuterDiameter_mm',
  bodyDoubleWall_mm: 'bodyDoubleWall_mm',
};
const CAP = { capOD_mm: 'capOuterDiameter_mm', capDoubleWall_mm: 'capDoubleWall_mm' };
const WALL = { mu: 'wallFriction_ratio', K: 'lateralStress_ratio' };
const KAWAKITA = { a: 'a_frac', b: 'b_per_tap', n: 'tapCount' };
const SILO = { rho: 'density_kg_per_m3', D_m: 'diameter_m', ...WALL, g_m_s2: 'gravity_m_per_s2' };
const BORE = { D_mm: 'boreDiameter_mm' };
const FEED = { rho0_mg_mm3: 'feedDensity_g_per_mL', ...BORE };
const WATER = { method: 'shells.water-limits', inputs: same('material'), outputs: ['lower_pct', 'upper_pct'] };

export const EQUATIONS = {
  'table lookup: body fill volume': {
    method: 'shells.body-volume-table',
    inputs: same('size'),
    read: { size: String },
    outputs: ['bodyVolume_mL'],
  },
  'V = pi ri^2 (L - t - ri) + (2/3) pi ri^3 ; ri=(OD-dwt)/2 ; t=dwt/2': {
    method: 'shells.body-volume',
    inputs: BODY,
    outputs: ['bodyVolume_mm3'],
  },
  'h = closedLength - bodyLength - dwtCap/2 ; r=(capOD-dwtCap)/2 ; V = pi h^2 (r - h/3) (spherical segment, h<=r)': {
    method: 'shells.cap-headroom',
    inputs: { closed_mm: 'closedLength_mm', body_mm: 'bodyLength_mm', ...CAP },
    outputs: ['headroomVolume_mm3'],
    isOneOfMany: true,
  },
  'c = (capOD - dwtCap) - bodyOD': {
    method: 'shells.diametral-clearance',
    inputs: { ...CAP, bodyOD_mm: 'bodyOuterDiameter_mm' },
    outputs: ['clearance_mm'],
  },
  'overlap = bodyLength + capLength - closedLength': {
    method: 'shells.overlap',
    inputs: { body_mm: 'bodyLength_mm', cap_mm: 'capLength_mm', closed_mm: 'closedLength_mm' },
    outputs: ['overlap_mm'],
  },
  'limit: LOD gelatin capsule, 1 g, 105 C, 2 h': WATER,
  'limit: LOD pullulan capsule': WATER,
  'typical limit: LOD hypromellose capsule': WATER,
  'm_w = m*LOD ; m_dry=m(1-LOD) ; transferred = m_dry*(LOD1/(1-LOD1)-LOD2/(1-LOD2))': {
    method: 'shells.water-transferred',
    inputs: { m_mg: 'shellMass_mg', LOD1: 'waterBefore_frac', LOD2: 'waterAfter_frac' },
    outputs: ['water_mg'],
  },
  'rho_app = m/(S_body t_body + S_cap t_cap), uniform wall t = dwt/2: S = pi Dm (L - OD/2) + 2 pi (Dm/2)^2, Dm = OD - t':
    {
      method: 'shells.apparent-wall-density',
      inputs: { m_mg: 'shellMass_mg', ...BODY, capLength_mm: 'capLength_mm', ...CAP },
      outputs: ['density_g_per_mL'],
    },
  'flat slug between two domes: dead = ri - sqrt(ri^2-rs^2); proud = sqrt(rc^2-rs^2) - (rc-h); longest = (L - t) - dead + proud':
    {
      method: 'shells.slug-fit',
      inputs: same(
        ...[
          'boreRadius_mm',
          'bodyInnerRadius_mm',
          'capInnerRadius_mm',
          'capHeadroom_mm',
          'bodyLength_mm',
          'bodyWall_mm',
        ],
      ),
      outputs: ['dead_mm', 'proud_mm', 'longestSlug_mm'],
    },
  'm = V * rho_fill, rho_fill(lactose, hand fill) ~ 0.978 g/mL implied by the table': {
    method: 'materials.mass-of-volume',
    inputs: { V_mL: 'volume_mL', rho_g_mL: 'density_g_per_mL' },
    outputs: ['mass_mg'],
  },
  'table: compressibility index band <-> Hausner band': {
    method: 'materials.flow-band',
    ...GRADE,
    idle: ['CI_band_pct'],
    outputs: ['hausnerLower_ratio', 'hausnerUpper_ratio'],
  },
  'H = 1/(1-CI/100)': {
    method: 'materials.hausner-from-index',
    inputs: { CI_pct: 'compressibilityIndex_pct' },
    outputs: ['hausner_ratio'],
  },
  'table: angle of repose band': {
    method: 'materials.repose-band',
    ...GRADE,
    outputs: ['reposeLower_deg', 'reposeUpper_deg'],
  },
  'CI = 100 (rho_t - rho_b)/rho_t ; H = rho_t/rho_b': {
    method: 'materials.flow-indices',
    inputs: { rho_b: 'bulkDensity_g_per_mL', rho_t: 'tappedDensity_g_per_mL' },
    outputs: ['compressibilityIndex_pct', 'hausner_ratio'],
  },
  'grade from compressibility index, half-open bands (<=10, <=15, <=20, <=25, <=31, <=37, else)': {
    method: 'materials.flow-grade-by-index',
    inputs: { CI_pct: 'compressibilityIndex_pct' },
    outputs: ['grade'],
  },
  'grade from angle of repose, half-open bands (<=30, <=35, <=40, <=45, <=55, <=65, else)': {
    method: 'materials.flow-grade-by-repose',
    inputs: same('repose_deg'),
    outputs: ['grade'],
  },
  'ffc = sigma1/fc ; band': {
    method: 'materials.flow-function-band',
    ...GRADE,
    outputs: ['lower_ratio', 'upper_ratio'],
  },
  'grade from flow function coefficient, bands <1, 1-2, 2-4, 4-10, >10': {
    method: 'materials.flow-function-grade',
    inputs: { ffc: 'flowFunction_ratio' },
    outputs: ['grade'],
  },
  'C(n) = (V0-Vn)/V0 = a b n/(1+b n) ; n/C = 1/(ab) + n/a': {
    method: 'materials.kawakita-tapping',
    inputs: KAWAKITA,
    outputs: ['reduction_frac'],
  },
  'rho_n = rho_0/(1-C(n))': {
    method: 'materials.density-after-taps',
    inputs: { rho0_g_mL: 'initialDensity_g_per_mL', ...KAWAKITA },
    outputs: ['density_g_per_mL'],
  },
  'rho = rho0/(1-C), C = a b P/(1+b P)': {
    method: 'materials.kawakita-pressure',
    inputs: { rho0_mg_mm3: 'initialDensity_g_per_mL', a: 'a_frac', b_per_MPa: 'b_per_MPa', P_MPa: 'pressure_MPa' },
    outputs: ['density_g_per_mL'],
  },
  'ln(1/(1-D)) = P/Py + A': {
    method: 'materials.heckel',
    inputs: { P_MPa: 'pressure_MPa', Py_MPa: 'yieldPressure_MPa', A: 'intercept_ratio' },
    outputs: ['solidFraction_frac'],
  },
  '100 V_rel = -W log10(P/P0) + C, V_rel = 1/D (volume per volume of solid)': {
    method: 'materials.walker',
    inputs: { W: 'slope_pct', C: 'intercept_pct', P: 'pressure_MPa', P0: 'referencePressure_MPa' },
    inUnitOf: { unit: ['pressure_MPa', 'referencePressure_MPa'] },
    outputs: ['relativeVolume_ratio', 'solidFraction_frac'],
  },
  'F_lower/F_upper = exp(-4 mu K L/D)': {
    method: 'materials.stress-ratio',
    inputs: { ...WALL, L_mm: 'length_mm', D_mm: 'diameter_mm' },
    outputs: ['transmitted_frac'],
  },
  'P_mean = P_top (1-exp(-k))/k , k=4 mu K L/D': {
    method: 'materials.mean-plug-stress',
    inputs: { P_top_MPa: 'topStress_MPa', ...WALL, L_mm: 'length_mm', D_mm: 'diameter_mm' },
    outputs: ['meanStress_MPa'],
  },
  'sigma(z) = rho g D/(4 mu K) (1-exp(-4 mu K z/D))': {
    method: 'materials.silo-stress',
    inputs: { ...SILO, z_m: 'depth_m' },
    outputs: ['stress_Pa'],
  },
  'z->inf: sigma = rho g D/(4 mu K)': { method: 'materials.silo-stress-limit', inputs: SILO, outputs: ['stress_Pa'] },
  'W = 0.58 rho_b sqrt(g) (D0 - 1.4 d)^2.5': {
    method: 'materials.orifice-flow',
    inputs: {
      ...{ rho_b: 'density_kg_per_m3', D0_m: 'orificeDiameter_m', d_m: 'particleDiameter_m' },
      g_m_s2: 'gravity_m_per_s2',
    },
    outputs: ['massFlow_g_per_s'],
  },
  'ejection-force minimum, Mg stearate level': {
    ...{
      method: 'materials.lubricant-levels',
      inputs: same('filler'),
      lists: ['filler', 'level_pct'],
      outputs: ['level_pct'],
    },
  },
  'constant compressing force used in a plug study': {
    method: 'quantity.kilogram-force',
    inputs: { kgf: 'force_kgf' },
    outputs: ['force_N'],
  },
  'H = W/(rho_plug A)': {
    method: 'dosing.disc-height',
    inputs: { W_mg: 'slugMass_mg', rho_plug_mg_mm3: 'slugDensity_g_per_mL', ...BORE },
    outputs: ['discHeight_mm'],
  },
  'm_0=rho0 A H ; m_k = m_{k-1}+f_k rho0 A p_k (refill after tamp k)': {
    method: 'dosing.disc-recurrence',
    inputs: { ...FEED, H_mm: 'discHeight_mm', p_mm: 'depths_mm', f: 'refills_ratio' },
    lists: ['depths_mm', 'refills_ratio', 'masses_mg'],
    outputs: ['masses_mg'],
  },
  'dW/dp = f rho0 A': {
    method: 'dosing.disc-pin-gain',
    inputs: { ...FEED, f: 'refill_ratio' },
    outputs: ['gain_mg_per_mm'],
  },
  'P = F/A': {
    method: 'dosing.tamp-pressure',
    inputs: { F_N: 'forces_N', ...BORE },
    lists: ['forces_N', 'pressures_MPa'],
    outputs: ['pressures_MPa'],
  },
  'F = F0 + k (x_set - x_plug), tamp stops when P_plug(rho)=F/A (force-limited)': {
    method: 'dosing.spring-force',
    inputs: { F0_N: 'preload_N', k_N_mm: 'rate_N_per_mm', compression_mm: 'compression_mm' },
    outputs: ['force_N'],
  },
};
