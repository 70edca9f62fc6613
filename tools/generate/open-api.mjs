/** The interface of the server as OpenAPI, from the schemas of its routes. */
import { buildApp } from '../../apps/fillwright/dist/http/build-app.js';
import { version } from '../../apps/fillwright/dist/version.js';

/** @returns {Promise<string>} text of docs/openapi.json */
export async function openApi() {
  // Nothing is asked of it, so it needs neither store nor pages.
  const app = await buildApp({ store: {}, version: version(), names: [], webFolder: '', mostRequests_per_min: 1 });
  const text = JSON.stringify(app.swagger(), null, 2);
  await app.close();
  return `${text}\n`;
}
