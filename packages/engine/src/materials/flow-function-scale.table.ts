/** Flowability by the flow function coefficient, from worst to best. */
export type FlowFunctionGrade = (typeof FLOW_FUNCTION_GRADES)[number];

export const FLOW_FUNCTION_GRADES = [
  'not flowing',
  'very cohesive',
  'cohesive',
  'easy-flowing',
  'free-flowing',
] as const;

/** A band of consolidation stress over unconfined strength; the best band is open upward. */
export interface FlowFunctionBand {
  readonly grade: FlowFunctionGrade;
  readonly lower_ratio: number;
  readonly upper_ratio?: number;
}

/** @source Jenike 1964, extended by Schulze, Powders and Bulk Solids (2008) (from memory) */
export const FLOW_FUNCTION_SCALE: readonly FlowFunctionBand[] = [
  { grade: 'not flowing', lower_ratio: 0, upper_ratio: 1 },
  { grade: 'very cohesive', lower_ratio: 1, upper_ratio: 2 },
  { grade: 'cohesive', lower_ratio: 2, upper_ratio: 4 },
  { grade: 'easy-flowing', lower_ratio: 4, upper_ratio: 10 },
  { grade: 'free-flowing', lower_ratio: 10 },
];
