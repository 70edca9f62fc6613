export type { AfterSetUp } from './after-set-up.ts';
export type { Brief, BriefPart, BriefShell, InProcessLimits, MachineRecord, PowderPart, RouteTest } from './brief.ts';
export type {
  Candidate,
  CandidateDetails,
  Criterion,
  Design,
  Merits,
  RankedCandidate,
  Rejection,
} from './candidate.ts';
export { DOCUMENT_RULES, type DocumentNotice, type DocumentRule } from './document-rules.ts';
export type { Correction, ExpectedWeights } from './expected-weights.ts';
export { narrowedWidth_mg } from './narrowed-width.ts';
export type { LimitCard, LimitPair } from './limit-card.ts';
export { limitCard } from './limit-card.ts';
export type { ContentOutlook, RouteOutlook, TestOutlook } from './route-outlook.ts';
export { entries } from './entries.ts';
export { candidateAt } from './candidate-at.ts';
export { detailsOf } from './details-of.ts';
export { placesOf, type Place, type SearchInput } from './place.ts';
export { search } from './search.ts';
export type { Tare } from './tare.ts';
