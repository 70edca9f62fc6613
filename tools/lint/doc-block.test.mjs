import { docBlock } from './doc-block.mjs';
import { ruleTester } from './rule-tester.mjs';

const WHOLE = `/**
 * Mass of a thing.
 *
 * @returns mass, mg
 * @throws never
 * @source geometry
 */`;
const missing = (code, tags, options = []) => ({
  code,
  options,
  errors: [{ messageId: 'missing', data: { name: 'f', tags } }],
});

ruleTester.run('doc-block', docBlock, {
  valid: [
    `${WHOLE}\nexport function f() {}`,
    `${WHOLE}\nexport const f = () => 1;`,
    `${WHOLE}\nexport function f(a: string): void;\nexport function f(a: number): void;\nexport function f(a: unknown): void {}`,
    'function f() {}',
    'export { f } from "./f.ts";',
    'export type F = () => void; export const A = "text"; export interface B { f(): void }',
    { code: '/** @returns a sentence */ export function f() {}', options: [{ tags: ['returns'] }] },
  ],
  invalid: [
    missing('export function f() {}', '@returns, @throws, @source'),
    missing('export const f = () => 1;', '@returns, @throws, @source'),
    missing('export const f = function () {};', '@returns, @throws, @source'),
    missing('// @returns a @throws b @source c\nexport function f() {}', '@returns, @throws, @source'),
    missing('/* @returns a @throws b @source c */\nexport function f() {}', '@returns, @throws, @source'),
    missing(`${WHOLE.replace(' * @throws never\n', '')}\nexport function f() {}`, '@throws'),
    missing(`${WHOLE.replace('geometry', '')}\nexport function f() {}`, '@source'),
    missing(`${WHOLE}\nconst a = 1;\nexport function f() {}`, '@returns, @throws, @source'),
    missing('/** A sentence. */ export function f() {}', '@returns', [{ tags: ['returns'] }]),
  ],
});
