import { z } from 'zod';
import { exampleText } from '../../usecases/example-text.ts';
import type { App } from '../app.ts';
import { PROBLEM_ANSWERS } from '../problem-answers.ts';
import { ProblemError } from '../problem-error.ts';

const NAME = 'the name of an example file';
const parameters = z.strictObject({
  name: z
    .string()
    .max(100, { error: NAME })
    .regex(/^[a-z0-9-]+(\.[a-z]+)*$/, { error: NAME })
    .meta({ description: NAME }),
});

/** `GET /api/examples/:name`: the text of an example brief, or of a filler that one names. */
export function exampleTextRoute(api: App): void {
  const schema = {
    summary: 'The text of an example brief, or of a filler file that one of them names',
    params: parameters,
    response: {
      200: { description: 'The file as it is', content: { 'text/plain': { schema: z.string() } } },
      ...PROBLEM_ANSWERS,
    },
  };
  api.get('/examples/:name', { schema }, async ({ params: { name } }, reply) => {
    const text = await exampleText(name);
    if (text === undefined) throw new ProblemError('unknown-example');
    return reply.type('text/plain; charset=utf-8').send(text);
  });
}
