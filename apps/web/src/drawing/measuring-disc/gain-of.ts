import type { CandidateDetails } from '@fillwright/engine/design';

export type SettingGain = CandidateDetails['gains']['settings'][number];

/** @returns what one step of an adjuster does, from the details; undefined while it is not known, or for an idle one */
export function gainOf(details: CandidateDetails | undefined, key: string): SettingGain | undefined {
  return details?.gains.settings.find((gain) => gain.key === key);
}
