import type { Problem, ProblemCode } from '@fillwright/contract/problems';

/** What a problem carries besides its code. */
export type ProblemMembers = Pick<Problem, 'detail' | 'errors' | 'current' | 'yours'>;

/** A request that cannot be answered as asked, for a reason that the person may know. */
export class ProblemError extends Error {
  readonly code: ProblemCode;
  readonly members: ProblemMembers;

  constructor(code: ProblemCode, members: ProblemMembers = {}) {
    super(code);
    this.name = 'ProblemError';
    this.code = code;
    this.members = members;
  }
}
