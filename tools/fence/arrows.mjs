import config, { ROOMS, WEB_ROOMS } from '../../.dependency-cruiser.mjs';
import { breach } from './breach.mjs';
import { runTool } from './run-tool.mjs';

const STATS = 'packages/stats/src';
const ENGINE = 'packages/engine/src';
const WORDS = 'packages/words/src';
const CONTRACT = 'packages/contract/src';
const APP = 'apps/fillwright/src';
const WEB = 'apps/web/src';

const emptyDoor = (folder) => ({ file: `${folder}/index.ts`, text: 'export const seeded = 0;' });
const roomsOf = (pack) => ROOMS[pack].map((room) => `packages/${pack}/src/${room}`);

/** What the breaches reach for, where the tree does not have it yet. */
const support = [
  ...[...roomsOf('stats'), ...roomsOf('engine'), `${WORDS}/seeded`, `${CONTRACT}/seeded`].map(emptyDoor),
  ...[`${ENGINE}/dosing/seeded-method`, `${APP}/store`, `${APP}/usecases`, `${APP}/commands`, `${APP}/http`].map(
    emptyDoor,
  ),
  emptyDoor('apps/seeded/src'),
  ...[...WEB_ROOMS, 'pages/seeded'].map((room) => ({
    file: `${WEB}/${room}/seeded.ts`,
    text: 'export const seeded = 0;',
  })),
  { file: `${ENGINE}/catalogue/seeded.ts`, text: 'export const seeded = 0;' },
  { file: `${STATS}/elementary/seeded.ts`, text: 'export const seeded = 0;' },
  { file: 'packages/stats/dist/elementary/seeded.js', text: 'export const seeded = 0;' },
  { file: `${ENGINE}/shells/seeded-round.ts`, text: `export { a as b } from './seeded-circle.ts';` },
];

/** Each room imports the one behind it. */
const lookAhead = Object.entries(ROOMS).flatMap(([pack, rooms]) =>
  rooms
    .slice(0, -1)
    .map((room, i) =>
      breach(
        `room-${pack}-${room}-looks-ahead`,
        `packages/${pack}/src/${room}`,
        `export { seeded } from '#${rooms[i + 1]}';`,
      ),
    ),
);

/** Each room of the web app imports the one behind it. */
const webLookAhead = WEB_ROOMS.slice(0, -1).map((room, i) =>
  breach(`web-${room}-looks-ahead`, `${WEB}/${room}`, `export { seeded } from '../${WEB_ROOMS[i + 1]}/seeded.ts';`),
);

const breaches = [
  ...webLookAhead,
  breach('web-pages-apart', `${WEB}/pages/brief`, `export { seeded } from '../seeded/seeded.ts';`),
  breach('stats-alone', `${STATS}/random`, `export { seeded } from '@fillwright/engine/catalogue';`),
  breach('stats-alone', `${STATS}/random`, `import type { A } from '@fillwright/engine/catalogue'; export type B = A;`),
  breach('stats-alone', `${STATS}/random`, `export const late = () => import('@fillwright/engine/catalogue');`),
  breach('stats-alone', `${STATS}/random`, `export { seeded } from '../../../engine/src/catalogue/index.ts';`),
  breach('engine-imports-stats-only', `${ENGINE}/shells`, `export { seeded } from '@fillwright/words/seeded';`),
  breach('engine-imports-stats-only', `${ENGINE}/shells`, `export { seeded } from '@fillwright/contract/seeded';`),
  breach('words-and-contract-apart', `${WORDS}/seeded`, `export { seeded } from '@fillwright/contract/seeded';`),
  breach('words-and-contract-apart', `${CONTRACT}/seeded`, `export { seeded } from '@fillwright/words/seeded';`),
  breach(
    'libraries-never-import-apps',
    `${WORDS}/seeded`,
    `export { seeded } from '../../../../apps/seeded/src/index.ts';`,
  ),
  breach('apps-apart', `${APP}/usecases`, `export { seeded } from '../../../seeded/src/index.ts';`),
  breach('engine-no-npm', `${ENGINE}/shells`, `export { z } from 'zod';`),
  breach('engine-no-npm', `${ENGINE}/shells`, `export { readFileSync } from 'node:fs';`),
  breach('libraries-no-node', `${STATS}/random`, `export { randomBytes } from 'node:crypto';`),
  breach('libraries-no-node', `${WORDS}/seeded`, `export { readFileSync } from 'node:fs';`),
  breach('libraries-no-node', `${CONTRACT}/seeded`, `export { readFileSync } from 'fs';`),
  breach('undeclared-package', `${WORDS}/seeded`, `export { z } from 'zod';`),
  breach('undeclared-package', `${STATS}/random`, `export { default as fc } from 'fast-check';`),
  breach('undeclared-package', `${APP}/usecases`, `export { useState } from 'react';`),
  breach('unresolved', `${ENGINE}/shells`, `export { exp } from '@fillwright/stats/src/elementary/exp.ts';`),
  breach('unresolved', `${ENGINE}/shells`, `export { exp } from '@fillwright/stats';`),
  breach('unresolved', `${ENGINE}/shells`, `export { seeded } from '#catalogue/seeded';`),
  { rule: 'no-cycles', file: `${ENGINE}/shells/seeded-circle.ts`, text: `export { b as a } from './seeded-round.ts';` },
  breach('front-door', `${ENGINE}/shells`, `export { seeded } from '../catalogue/seeded.ts';`),
  breach('room-by-name', `${ENGINE}/shells`, `export { seeded } from '../catalogue/index.ts';`),
  breach('package-door', `${ENGINE}/shells`, `export { seeded } from '../../../stats/src/elementary/seeded.ts';`),
  breach('package-door', `${ENGINE}/shells`, `export { seeded } from '../../../stats/dist/elementary/seeded.js';`),
  breach('package-by-name', `${ENGINE}/shells`, `export { exp } from '../../../stats/src/elementary/index.ts';`),
  breach('methods-by-list-only', `${ENGINE}/design`, `export { seeded } from '../dosing/seeded-method/index.ts';`),
  breach('methods-by-list-only', `${ENGINE}/design`, `export { seeded } from '#dosing/seeded-method';`),
  breach('methods-by-list-only', `${ENGINE}/dosing`, `export { seeded } from './seeded-method/index.ts';`),
  breach(
    'methods-by-list-only',
    `${WORDS}/seeded`,
    `export { seeded } from '@fillwright/engine/dosing/seeded-method';`,
  ),
  breach(
    'methods-by-list-only',
    `${APP}/usecases`,
    `export { seeded } from '@fillwright/engine/dosing/seeded-method';`,
  ),
  breach('methods-apart', `${ENGINE}/dosing/seeded-other`, `export { seeded } from '../seeded-method/index.ts';`),
  breach('room-engine-unlisted', `${ENGINE}/seeded`, `export { seeded } from '#catalogue';`),
  breach('room-stats-unlisted', `${STATS}/seeded`, `export { exp } from '#elementary';`),
  breach('store-looks-up', `${APP}/store`, `export { seeded } from '../usecases/index.ts';`),
  breach('usecases-look-up', `${APP}/usecases`, `export { seeded } from '../http/index.ts';`),
  breach('past-the-usecases', `${APP}/commands`, `export { seeded } from '../store/index.ts';`),
  breach('past-the-usecases', `${APP}/http`, `export { seeded } from '../store/index.ts';`),
  breach('http-knows-no-command', `${APP}/http`, `export { seeded } from '../commands/index.ts';`),
  ...lookAhead,
];

async function run(copy) {
  const args = ['packages/*/src', 'apps/*/src', '--config', '.dependency-cruiser.mjs', '--output-type', 'json'];
  const { modules, summary } = JSON.parse(await runTool(copy, 'depcruise', args));
  return { modules, found: summary.violations.map(({ rule, from }) => `${rule.name} ${from}`) };
}

export const arrows = { breaches, support, run };

/** Rules that no breach tries: they may have stopped working long ago. */
export function untriedRules() {
  return config.forbidden.map(({ name }) => name).filter((name) => !breaches.some(({ rule }) => rule === name));
}

/** Imports between workspaces by pair, without those we seeded. */
export function countEdges({ modules }) {
  const edges = {};
  for (const { source, dependencies } of modules.filter((module) => !module.source.includes('seeded')))
    for (const { resolved } of dependencies) {
      const [from, to] = [source, resolved].map((path) => /^(?:packages|apps)[/]([^/]+)[/]src[/]/.exec(path)?.[1]);
      if (from && to && from !== to) edges[`${from} -> ${to}`] = (edges[`${from} -> ${to}`] ?? 0) + 1;
    }
  return edges;
}
