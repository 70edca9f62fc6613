/**
 * `npm run generate`: writes every file that is made from the code. With `--check` it writes nothing, makes them again and
 * names each one that differs; exit 1 if any does. Works on the build.
 */
import { mkdirSync, readFileSync, readdirSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { documentSchemas } from './generate/document-schemas.mjs';
import { methodsManual } from './generate/methods-manual.mjs';
import { openApi } from './generate/open-api.mjs';

/**
 * A folder and the function that makes all its files, text by name; or a file and the function that makes its text. Either
 * belongs to its generator alone.
 */
const GENERATORS = { 'docs/methods': methodsManual, 'docs/openapi.json': openApi, 'docs/schemas': documentSchemas };

const isCheck = process.argv.includes('--check');
const differing = [];
for (const [place, make] of Object.entries(GENERATORS)) {
  const made = byPath(place, await make());
  const present = byPath(place, read(place));
  for (const path of new Set([...Object.keys(made), ...Object.keys(present)])) {
    if (made[path] === present[path]) continue;
    differing.push(path);
    if (isCheck) continue;
    mkdirSync(dirname(path), { recursive: true });
    if (made[path] === undefined) rmSync(path);
    else writeFileSync(path, made[path]);
  }
}
for (const path of differing) console.error(isCheck ? `differs: ${path} (npm run generate)` : `written: ${path}`);
process.exitCode = isCheck && differing.length > 0 ? 1 : 0;

/** Text by path, of one file or of a folder. */
function byPath(place, content) {
  if (typeof content === 'string') return { [place]: content };
  return Object.fromEntries(Object.entries(content).map(([name, text]) => [join(place, name), text]));
}

/** What stands there: the text of a file, the files of a folder, or nothing. */
function read(place) {
  const found = statSync(place, { throwIfNoEntry: false });
  if (found?.isFile()) return readFileSync(place, 'utf8');
  const names = found ? readdirSync(place) : [];
  return Object.fromEntries(names.map((name) => [name, readFileSync(join(place, name), 'utf8')]));
}
