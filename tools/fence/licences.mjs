import { licenceFaults } from '../licences.mjs';

const folder = (name) => `node_modules/${name}`;
const breaches = [
  { rule: 'licence-not-allowed', subject: folder('a'), text: 'GPL-3.0-only, shipped' },
  { rule: 'licence-not-allowed', subject: folder('b'), text: 'MPL-2.0, shipped' },
  { rule: 'licence-not-allowed', subject: folder('c'), text: 'AGPL-3.0-only, build and test' },
  { rule: 'licence-not-allowed', subject: folder('d'), text: 'no licence stated' },
  { rule: 'install-script', subject: folder('e'), text: 'an install script' },
];

function run() {
  const faults = licenceFaults({
    [folder('a')]: { license: 'GPL-3.0-only' },
    [folder('b')]: { license: 'MPL-2.0' },
    [folder('c')]: { license: 'AGPL-3.0-only', dev: true },
    [folder('d')]: {},
    [folder('e')]: { license: 'MIT', hasInstallScript: true },
  });
  return { found: faults.map((fault) => fault.split(' ').slice(0, 2).join(' ').replace(':', '')) };
}

export const licences = { breaches, run };
