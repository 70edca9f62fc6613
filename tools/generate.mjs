/**
 * `npm run generate`: writes every file that is made from the code. With `--check` it writes nothing, makes them again and
 * names each one that differs; exit 1 if any does. Works on the build.
 */
import { existsSync, mkdirSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { documentSchemas } from './generate/document-schemas.mjs';
import { methodsManual } from './generate/methods-manual.mjs';

/** Folder -> function that makes all its files, text by name. A folder belongs to its generator alone. */
const GENERATORS = { 'docs/methods': methodsManual, 'docs/schemas': documentSchemas };

const isCheck = process.argv.includes('--check');
const differing = [];
for (const [folder, make] of Object.entries(GENERATORS)) {
  const files = make();
  const present = read(folder);
  for (const name of new Set([...Object.keys(files), ...Object.keys(present)])) {
    if (files[name] === present[name]) continue;
    const path = join(folder, name);
    differing.push(path);
    if (isCheck) continue;
    mkdirSync(dirname(path), { recursive: true });
    if (files[name] === undefined) rmSync(path);
    else writeFileSync(path, files[name]);
  }
}
for (const path of differing) console.error(isCheck ? `differs: ${path} (npm run generate)` : `written: ${path}`);
process.exitCode = isCheck && differing.length > 0 ? 1 : 0;

function read(folder) {
  const names = existsSync(folder) ? readdirSync(folder) : [];
  return Object.fromEntries(names.map((name) => [name, readFileSync(join(folder, name), 'utf8')]));
}
