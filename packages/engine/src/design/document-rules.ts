/** Every way in which two values of a brief, a filler or a shell file can contradict each other. `words` has a sentence for each. */
export const DOCUMENT_RULES = [
  'alert-above-action',
  'bores-not-mapped',
  'claim-above-fill',
  'compression-ends-below-feed',
  'feed-density-implausible',
  'follows-unknown',
  'map-not-one-to-one',
  'mounted-twice',
  'one-part-only',
  'pair-below-feed',
  'part-number-twice',
  'range-upside-down',
  'record-of-other-size',
  'shell-twice',
  'shell-halves-disagree',
  'speeds-out-of-order',
  'stations-out-of-order',
  'substance-twice',
  'substances-above-total',
  'tapped-below-bulk',
  'target-above-body',
  'test-twice',
  'true-below-tapped',
  'validated-outside-machine',
] as const;

export type DocumentRule = (typeof DOCUMENT_RULES)[number];

/** What a person should know about a document that is in order. */
export interface DocumentNotice {
  readonly code: 'mass-route-below-threshold';
  /** Path of the field, joined by points. */
  readonly field: string;
  readonly facts: Readonly<Record<string, number | string>>;
}
