import { z } from 'zod';
import { listExamples } from '../../usecases/list-examples.ts';
import type { App } from '../app.ts';
import { PROBLEM_ANSWERS } from '../problem-answers.ts';

const exampleSchema = z.strictObject({ name: z.string(), title: z.string() });

/** `GET /api/examples`: the briefs that come with the program. */
export function listExamplesRoute(api: App): void {
  const schema = {
    summary: 'The briefs that come with the program, by file name',
    response: { 200: z.array(exampleSchema), ...PROBLEM_ANSWERS },
  };
  api.get('/examples', { schema }, async () => [...(await listExamples())]);
}
