import { z } from 'zod';
import type { App } from '../app.ts';
import type { AppParts } from '../app-parts.ts';
import { PROBLEM_ANSWERS } from '../problem-answers.ts';

const healthSchema = z.strictObject({ program: z.literal('fillwright'), version: z.string() });

/** `GET /api/health`: whether the server answers, and which version it is. */
export function healthRoute(api: App, { version }: AppParts): void {
  const schema = { summary: 'Whether the server answers', response: { 200: healthSchema, ...PROBLEM_ANSWERS } };
  api.get('/health', { schema }, () => ({ program: 'fillwright' as const, version }));
}
