/**
 * Body volumes as one university prints them, mL. A check, not the default: size 4 stands as .20 here and as .21 in
 * trade charts.
 *
 * @source University of North Carolina, Pharmaceutics and Compounding Laboratory, page "Hard Gelatin Capsules" (seen)
 */
export const UNIVERSITY_VOLUMES = [
  { size: '000', bodyVolume_mL: 1.37 },
  { size: '00', bodyVolume_mL: 0.95 },
  { size: '0', bodyVolume_mL: 0.68 },
  { size: '1', bodyVolume_mL: 0.5 },
  { size: '2', bodyVolume_mL: 0.37 },
  { size: '3', bodyVolume_mL: 0.3 },
  { size: '4', bodyVolume_mL: 0.2 },
  { size: '5', bodyVolume_mL: 0.13 },
] as const;
