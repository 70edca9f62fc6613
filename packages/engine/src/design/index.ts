export type { AfterSetUp } from './after-set-up.ts';
export type { Brief, BriefPart, BriefShell, InProcessLimits, MachineRecord, PowderPart, RouteTest } from './brief.ts';
export type { Candidate, Criterion, Design, Merits, RankedCandidate, Rejection } from './candidate.ts';
export { DOCUMENT_RULES, type DocumentNotice, type DocumentRule } from './document-rules.ts';
export type { Correction, ExpectedWeights } from './expected-weights.ts';
export type { LimitCard, LimitPair } from './limit-card.ts';
export type { RouteOutlook, TestOutlook } from './route-outlook.ts';
export { search, type SearchInput } from './search.ts';
export type { Tare } from './tare.ts';
