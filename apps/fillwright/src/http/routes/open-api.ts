import type { App } from '../app.ts';

/** `GET /api/openapi.json`: this interface as OpenAPI; `docs/openapi.json` is the same. */
export function openApiRoute(api: App): void {
  api.get('/openapi.json', { schema: { hide: true } }, () => api.swagger());
}
