/** Grade of flow by USP <1174>, from best to worst. */
export type FlowGrade = (typeof FLOW_GRADES)[number];

export const FLOW_GRADES = ['excellent', 'good', 'fair', 'passable', 'poor', 'very poor', 'very, very poor'] as const;

/** One row as printed: whole numbers with gaps between the bands; the worst band is open upward. */
export interface FlowBand {
  readonly grade: FlowGrade;
  readonly compressibilityIndexLower_pct: number;
  readonly compressibilityIndexUpper_pct?: number;
  readonly hausnerLower_ratio: number;
  readonly hausnerUpper_ratio?: number;
  readonly reposeLower_deg: number;
  readonly reposeUpper_deg?: number;
}

/** @source USP <1174> Powder Flow (USP 29-NF 24 text, scale of flowability and table of the angle of repose, seen) */
export const FLOW_SCALE: readonly FlowBand[] = [
  {
    grade: 'excellent',
    compressibilityIndexLower_pct: 0,
    compressibilityIndexUpper_pct: 10,
    hausnerLower_ratio: 1.0,
    hausnerUpper_ratio: 1.11,
    reposeLower_deg: 25,
    reposeUpper_deg: 30,
  },
  {
    grade: 'good',
    compressibilityIndexLower_pct: 11,
    compressibilityIndexUpper_pct: 15,
    hausnerLower_ratio: 1.12,
    hausnerUpper_ratio: 1.18,
    reposeLower_deg: 31,
    reposeUpper_deg: 35,
  },
  {
    grade: 'fair',
    compressibilityIndexLower_pct: 16,
    compressibilityIndexUpper_pct: 20,
    hausnerLower_ratio: 1.19,
    hausnerUpper_ratio: 1.25,
    reposeLower_deg: 36,
    reposeUpper_deg: 40,
  },
  {
    grade: 'passable',
    compressibilityIndexLower_pct: 21,
    compressibilityIndexUpper_pct: 25,
    hausnerLower_ratio: 1.26,
    hausnerUpper_ratio: 1.34,
    reposeLower_deg: 41,
    reposeUpper_deg: 45,
  },
  {
    grade: 'poor',
    compressibilityIndexLower_pct: 26,
    compressibilityIndexUpper_pct: 31,
    hausnerLower_ratio: 1.35,
    hausnerUpper_ratio: 1.45,
    reposeLower_deg: 46,
    reposeUpper_deg: 55,
  },
  {
    grade: 'very poor',
    compressibilityIndexLower_pct: 32,
    compressibilityIndexUpper_pct: 37,
    hausnerLower_ratio: 1.46,
    hausnerUpper_ratio: 1.59,
    reposeLower_deg: 56,
    reposeUpper_deg: 65,
  },
  {
    grade: 'very, very poor',
    compressibilityIndexLower_pct: 38,
    hausnerLower_ratio: 1.6,
    reposeLower_deg: 66,
  },
];
