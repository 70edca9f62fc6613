import { fileNames } from './file-names.mjs';
import { ruleTester } from './rule-tester.mjs';

const named = (filename, ...errors) => ({ code: '', filename, ...(errors.length > 0 && { errors }) });
const empty = (name) => ({ messageId: 'empty', data: { name } });

ruleTester.run('file-names', fileNames, {
  valid: [
    named('packages/engine/src/materials/compressibility-index.ts'),
    named('packages/engine/src/materials/compressibility-index.test.ts'),
    named('packages/stats/src/random/normal.kernel.ts'),
    named('packages/stats/src/designs/common-cause.ts'),
  ],
  invalid: [
    ...['utils', 'helpers', 'common', 'manager', 'types'].map((name) => named(`src/${name}.ts`, empty(name))),
    named('src/helpers.test.ts', empty('helpers')),
    named('src/shell-types.ts', empty('shell-types')),
    named('src/utils/depth.ts', empty('utils')),
    named('src/fillMass.ts', { messageId: 'kebab', data: { name: 'fillMass' } }),
  ],
});
