import {
  cpSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  realpathSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));

/** A copy of the tree in the system's temp folder: sources and settings; installed packages as links. */
export function copyTree() {
  const copy = realpathSync(mkdtempSync(join(tmpdir(), 'fillwright-fence-')));
  const settings = readdirSync(ROOT).filter((name) => /[.](json|mjs|ts)$|^[.](prettier|npmrc|gitignore)/.test(name));
  for (const part of ['packages', 'apps', 'tools', ...settings])
    cpSync(join(ROOT, part), join(copy, part), {
      recursive: true,
      filter: (path) => !/[/](node_modules|dist)$/.test(path),
    });
  linkPackages(copy);
  return copy;
}

/** Writes a seeded file, with the folders it needs. A supporting file never replaces one of the tree. */
export function write(copy, { file, text }) {
  const path = join(copy, file);
  if (existsSync(path)) return;
  mkdirSync(dirname(path), { recursive: true });
  writeFileSync(path, `${text}\n`);
}

function linkPackages(copy) {
  const from = join(ROOT, 'node_modules');
  mkdirSync(join(copy, 'node_modules/@fillwright'), { recursive: true });
  for (const name of readdirSync(from).filter((each) => !['@fillwright', '.cache'].includes(each)))
    symlinkSync(join(from, name), join(copy, 'node_modules', name));
  for (const name of readdirSync(join(copy, 'packages')))
    symlinkSync(join(copy, 'packages', name), join(copy, 'node_modules/@fillwright', name));
}
