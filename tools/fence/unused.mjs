import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { runTool } from './run-tool.mjs';

const ROOM = 'packages/engine/src/seeded-unused';
const MANIFEST = 'packages/contract/package.json';

const support = [
  { file: `${ROOM}/index.ts`, text: `export { used } from './half-used.ts';` },
  { file: `${ROOM}/half-used.ts`, text: `export const used = 'a'; export const unusedName = 'b';` },
];
const breaches = [
  { rule: 'files', file: `${ROOM}/left-over.ts`, text: `export const a = 'a';` },
  { rule: 'exports', subject: `${ROOM}/half-used.ts unusedName`, text: 'an export nobody imports' },
  { rule: 'dependencies', subject: `${MANIFEST} semver`, text: 'a declared package nobody imports' },
  {
    rule: 'unlisted',
    file: `${ROOM}/index.test.ts`,
    subject: `${ROOM}/index.test.ts tapable`,
    text: `import 'tapable';`,
  },
];

async function run(copy) {
  const manifest = JSON.parse(readFileSync(join(copy, MANIFEST), 'utf8'));
  manifest.dependencies.semver = '7.0.0';
  writeFileSync(join(copy, MANIFEST), JSON.stringify(manifest));
  const { issues } = JSON.parse(await runTool(copy, 'knip', ['--reporter', 'json', '--no-config-hints']));
  const found = issues.flatMap(({ file, ...kinds }) =>
    Object.entries(kinds).flatMap(([kind, items]) =>
      items.map(({ name }) => `${kind} ${kind === 'files' ? name : `${file} ${name}`}`),
    ),
  );
  return { found };
}

export const unused = { breaches, support, run };
