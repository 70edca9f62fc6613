import { problemSchema } from '@fillwright/contract/problems';
import { PROBLEM_TYPE } from './send-problem.ts';

const content = { [PROBLEM_TYPE]: { schema: problemSchema } };

/** What every route may answer besides its result. */
export const PROBLEM_ANSWERS = {
  '4xx': { description: 'What is wrong with the request (docs/problems.md)', content },
  '5xx': { description: 'What is wrong with the server (docs/problems.md)', content },
};
