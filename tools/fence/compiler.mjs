import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { breach } from './breach.mjs';
import { runTool } from './run-tool.mjs';

/** stats and engine know neither Node nor a browser; no syntax that has to be rewritten before it runs. */
const ROOMS = ['packages/stats/src/elementary', 'packages/engine/src/catalogue'];
const breaches = ROOMS.flatMap((room) => [
  breach('TS2591', room, 'export const place: unknown = process;'),
  breach('TS2591', room, `export { readFileSync } from 'node:fs';`),
  breach('TS2304', room, 'export const place: unknown = window;'),
  breach('TS2584', room, 'export const place: unknown = document;'),
  breach('TS2304', room, 'export const place: unknown = fetch;'),
  breach('TS1294', room, 'export enum Size { Small }'),
  breach('TS2322', room, 'export const first: number = [1][0];'),
  breach('TS2375', room, 'export const a: { b?: number } = { b: undefined };'),
  breach('TS1484', room, `import { Place } from './seeded-place.ts'; export type A = Place;`),
]);
const support = ROOMS.map((room) => ({
  file: `${room}/seeded-place.ts`,
  text: 'export type Place = string;',
}));

/** Each package's own settings, on the seeded files alone: an error of the whole program would keep tsc from looking at the rest. */
async function run(copy) {
  const texts = await Promise.all(
    ROOMS.map((room) => runTool(copy, 'tsc', ['-p', seededProject(copy, room), '--pretty', 'false'])),
  );
  const lines = texts.join('\n').matchAll(/^(\S+?)\(\d+,\d+\): error (TS\d+)/gm);
  return { found: Array.from(lines, ([, file, code]) => `${code} ${file}`) };
}

function seededProject(copy, room) {
  const folder = join(copy, room.split('/src/')[0]);
  const files = breaches.map(({ file }) => file).filter((file) => file.startsWith(room));
  const project = {
    extends: './tsconfig.json',
    files: files.map((file) => join(copy, file)),
    include: [],
    references: [],
  };
  writeFileSync(join(folder, 'tsconfig.seeded.json'), JSON.stringify(project));
  return join(folder, 'tsconfig.seeded.json');
}

export const compiler = { breaches, support, run };
