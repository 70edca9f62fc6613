import { ruleTester } from './rule-tester.mjs';
import { suppressionReason } from './suppression-reason.mjs';

const stopped = (code) => ({ code, errors: [{ messageId: 'reason' }] });

ruleTester.run('suppression-reason', suppressionReason, {
  valid: [
    '// eslint-disable-next-line complexity -- one branch a case of the table in SOURCES.md\nf();',
    'f(); // eslint-disable-line max-params -- the shape is that of the standard',
    '// an ordinary comment about eslint-disable\nf();',
  ],
  invalid: [
    stopped('// eslint-disable-next-line complexity\nf();'),
    stopped('// eslint-disable-next-line -- because\nf();'),
    stopped('/* eslint-disable */\nf();'),
    stopped('/* eslint-disable complexity -- the whole file */\nf();'),
  ],
});
