import { describe, expect, test } from 'vitest';
import { licenceFaults } from './licences.mjs';

const shipped = (license, more = {}) => licenceFaults({ 'node_modules/a': { license, ...more } });

// Expected values: the list of licences in CONTRIBUTING.md; expressions as SPDX 2.3 annex D reads them.
describe('licenceFaults', () => {
  test.each(['MIT', 'Apache-2.0', '(MIT OR GPL-3.0-only)', 'MIT AND ISC'])('golden: %s may be shipped', (licence) => {
    expect(shipped(licence)).toEqual([]);
  });
  test.each([
    'GPL-3.0-only',
    'MPL-2.0',
    'MIT AND GPL-3.0-only',
    '(MIT OR GPL-3.0-only) AND GPL-3.0-only',
    'SEE LICENSE IN LICENSE',
    undefined,
    { type: 'MIT' },
  ])('refuses: %s may not be shipped', (licence) => {
    expect(shipped(licence)).toHaveLength(1);
    expect(shipped(licence)[0]).toContain('licence-not-allowed: node_modules/a (shipped)');
  });
  test('golden: a font may be shipped under OFL-1.1, nothing else may', () => {
    const folder = 'node_modules/@fontsource-variable/a';
    expect(licenceFaults({ [folder]: { license: 'OFL-1.1' } })).toEqual([]);
    expect(licenceFaults({ [folder]: { license: 'GPL-3.0-only' } })).toHaveLength(1);
    expect(shipped('OFL-1.1')).toHaveLength(1);
  });
  test('golden: MPL-2.0 may be used for build and test', () => {
    expect(shipped('MPL-2.0', { dev: true })).toEqual([]);
  });
  test('refuses: MPL-2.0 for what is both shipped and used for the build', () => {
    expect(shipped('MPL-2.0', { devOptional: true })).toHaveLength(1);
  });
  test('refuses: an install script', () => {
    expect(shipped('MIT', { hasInstallScript: true })).toEqual([
      'install-script: node_modules/a has an install script, and set-up blocks those',
    ]);
  });
  test('limit: the installed package counts, not what the lock says of it', () => {
    expect(licenceFaults({ 'node_modules/a': { license: 'MIT' } }, () => 'GPL-2.0-only')).toHaveLength(1);
  });
  test('limit: our own workspaces are not asked', () => {
    expect(licenceFaults({ 'packages/engine': {}, 'node_modules/@fillwright/engine': { link: true } })).toEqual([]);
  });
});
