/** Every package in the lock has a licence we may ship (or, for build and test only, may use), and none has an install script. */
import { existsSync, readFileSync, realpathSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const SHIPPED = ['MIT', 'ISC', 'BSD-2-Clause', 'BSD-3-Clause', 'Apache-2.0', '0BSD', 'BlueOak-1.0.0', 'Unlicense'];
const BUILD_ONLY = [...SHIPPED, 'MPL-2.0'];
/** Fonts only: bundled, never changed (docs/adr/0006-font-licence.md). */
const FONTS = [...SHIPPED, 'OFL-1.1'];
const FONT_FOLDER = /node_modules\/@fontsource(-variable)?\//;

if (realpathSync(process.argv[1]) === fileURLToPath(import.meta.url)) {
  const { packages } = readJson('package-lock.json');
  const faults = licenceFaults(packages, installedLicence);
  for (const fault of faults) console.error(fault);
  process.exitCode = faults.length === 0 ? 0 : 1;
}

/** One sentence for each package that we must not depend on. `licenceOf(folder)` says what the installed package states itself. */
export function licenceFaults(packages, licenceOf = () => undefined) {
  return Object.entries(packages)
    .filter(([folder, { link }]) => folder.includes('node_modules/') && !link)
    .flatMap(([folder, { dev, hasInstallScript, license }]) => {
      const allowed = FONT_FOLDER.test(folder) ? FONTS : dev ? BUILD_ONLY : SHIPPED;
      const licence = licenceOf(folder) ?? license;
      const use = dev ? 'build and test' : 'shipped';
      return [
        ...(isAllowed(licence, allowed) ? [] : [`licence-not-allowed: ${folder} (${use}): ${JSON.stringify(licence)}`]),
        ...(hasInstallScript ? [`install-script: ${folder} has an install script, and set-up blocks those`] : []),
      ];
    });
}

/** SPDX expressions: one side of an OR is enough, both sides of an AND are needed; a mixture of both is for a person to read. */
function isAllowed(licence, allowed) {
  if (typeof licence !== 'string' || (licence.includes(' OR ') && licence.includes(' AND '))) return false;
  const choices = licence.replace(/[()]/g, '').split(' OR ');
  return choices.some((choice) => choice.split(' AND ').every((name) => allowed.includes(name)));
}

function installedLicence(folder) {
  const file = `${folder}/package.json`;
  return existsSync(file) ? readJson(file).license : undefined;
}

function readJson(file) {
  return JSON.parse(readFileSync(file, 'utf8'));
}
