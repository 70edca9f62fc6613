import { RuleTester } from 'eslint';
import tseslint from 'typescript-eslint';
import { afterAll, describe, it } from 'vitest';

RuleTester.afterAll = afterAll;
RuleTester.describe = describe;
RuleTester.it = it;

/** ESLint's own tester, reading TypeScript and reporting to Vitest. */
export const ruleTester = new RuleTester({ languageOptions: { parser: tseslint.parser } });
