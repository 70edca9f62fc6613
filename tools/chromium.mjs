/** Chromium for the browser tests: `CHROMIUM_PATH`, else one on the path, else Debian's own, installed here when this is root. */
import { spawnSync } from 'node:child_process';
import { accessSync, constants, realpathSync, statSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const NAMES = ['chromium', 'chromium-browser', 'google-chrome'];
const APT = 'apt-get -o DPkg::Lock::Timeout=120';

if (process.argv[1] && realpathSync(process.argv[1]) === fileURLToPath(import.meta.url)) {
  try {
    console.log(chromiumPath());
  } catch (error) {
    console.error(error.message);
    process.exitCode = 1;
  }
}

/** Path of Chromium; an error of one sentence that says what to do when there is none. */
export function chromiumPath() {
  const given = process.env.CHROMIUM_PATH;
  if (given) {
    if (isProgram(given)) return given;
    throw new Error(`CHROMIUM_PATH names ${given}, which is no program that can be started here: correct or unset it.`);
  }
  const found = onPath(NAMES) ?? (install() ? onPath(NAMES) : undefined);
  if (found) return found;
  throw new Error(
    'The browser tests need Chromium, and none was found: install it (on Debian: apt-get install chromium) ' +
      'or name one in CHROMIUM_PATH, and run the same command again.',
  );
}

/** Only root on Debian can do it, and only there it is a matter of seconds. */
function install() {
  if (process.getuid?.() !== 0 || !onPath(['apt-get'])) return false;
  process.stderr.write('setting up: chromium ...\n');
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
  return [`${APT} update`, `${APT} install -y --no-install-recommends chromium`].every((line) => {
    const [command, ...args] = line.split(' ');
    const { status, stdout, stderr } = spawnSync(command, args, { env, encoding: 'utf8' });
    if (status !== 0) process.stderr.write(`${stdout ?? ''}${stderr ?? ''}`);
    return status === 0;
  });
}

function onPath(names) {
  const folders = (process.env.PATH ?? '').split(delimiter).filter((folder) => folder !== '');
  return names.flatMap((name) => folders.map((folder) => join(folder, name))).find(isProgram);
}

function isProgram(path) {
  try {
    accessSync(path, constants.X_OK);
    return statSync(path).isFile();
  } catch {
    return false;
  }
}
