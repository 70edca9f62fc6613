import { z } from 'zod';
import { listExamples } from '../../usecases/list-examples.ts';
import type { App } from '../app.ts';
import { PROBLEM_ANSWERS } from '../problem-answers.ts';

const exampleSchema = z.strictObject({ kind: z.enum(['brief', 'filler']), name: z.string(), title: z.string() });

/** `GET /api/examples`: the briefs and fillers that come with the program. */
export function listExamplesRoute(api: App): void {
  const schema = {
    summary: 'The briefs and fillers that come with the program, by file name',
    response: { 200: z.array(exampleSchema), ...PROBLEM_ANSWERS },
  };
  api.get('/examples', { schema }, async () => [...(await listExamples())]);
}
