import { relative } from 'node:path';
import { breach } from './breach.mjs';
import { runTool } from './run-tool.mjs';

const STATS = 'packages/stats/src/elementary';
const ENGINE = 'packages/engine/src/catalogue';
const WORDS = 'packages/words/src/seeded';
const CONTRACT = 'packages/contract/src/seeded';
const APP = 'apps/fillwright/src/usecases';

const EXACT = [STATS, ENGINE];
const LIBRARIES = [STATS, ENGINE, WORDS, CONTRACT];
const UNLIKE_BITS = [
  ...['exp', 'expm1', 'log', 'log2', 'log10', 'log1p', 'pow', 'cbrt', 'sinh', 'cosh', 'tanh'],
  ...['sin', 'cos', 'tan', 'asin', 'acos', 'atan', 'atan2'],
];

const everywhere = (rule, folders, text) => folders.map((folder) => breach(rule, folder, text));
const named = (rule, file, text) => ({ rule, file, text });
const lines = (count, line) => Array.from({ length: count }, (_, i) => line(i)).join('\n');

const restricted = [
  ...[
    'Date.now()',
    'new Date()',
    'fetch("a")',
    'performance.now()',
    'setTimeout(() => 0, 1)',
    'process.env',
    'globalThis.Date',
  ].flatMap((text) => everywhere('no-restricted-globals', LIBRARIES, `export const a: unknown = ${text};`)),
  ...everywhere('no-restricted-properties', LIBRARIES, 'export const a: unknown = Math.random();'),
  ...UNLIKE_BITS.flatMap((name) =>
    everywhere('no-restricted-syntax', EXACT, `export const a: unknown = Math.${name}(1, 2);`),
  ),
  ...everywhere('no-restricted-syntax', EXACT, `export const a: unknown = Math['exp'](1);`),
  ...everywhere('no-restricted-syntax', EXACT, 'const { exp } = Math; export const a: unknown = exp(1);'),
  ...everywhere('no-restricted-syntax', EXACT, 'const m = Math; export const a: unknown = m.exp(1);'),
  ...everywhere('no-restricted-syntax', EXACT, 'export const square = (a: number): unknown => a ** 2;'),
  ...everywhere('no-restricted-syntax', EXACT, 'export const square = (a: number): unknown => { a **= 2; return a; };'),
  ...[
    'export default 1;',
    'const a = 1; export { a as default };',
    `export * from './a.ts';`,
    'export enum A { B }',
  ].flatMap((text) => everywhere('no-restricted-syntax', [...LIBRARIES, APP], text)),
];

const own = [
  ...everywhere('fillwright/unit-names', [ENGINE, CONTRACT], 'export interface A { readonly mass: number }'),
  ...everywhere('fillwright/unit-names', [ENGINE, CONTRACT], 'export function mass(): number { return 1; }'),
  ...everywhere(
    'fillwright/unit-names',
    [ENGINE, CONTRACT],
    'export function f({ a }: { a: number }): string { return `${a}`; }',
  ),
  breach(
    'fillwright/unit-names',
    ENGINE,
    'export interface A { readonly masses: Float64Array; readonly density_gPerMl: Quantity }',
  ),
  breach('fillwright/unit-names', CONTRACT, 'export const a = z.strictObject({ mass: z.number().positive() });'),
  ...everywhere(
    'fillwright/doc-block',
    EXACT,
    '/** A. @returns a @throws never */\nexport function a(): string { return "a"; }',
  ),
  ...everywhere('fillwright/doc-block', EXACT, '/** A. @returns a @source a */\nexport const a = (): string => "a";'),
  ...everywhere('fillwright/doc-block', [WORDS, CONTRACT], '/** A. */\nexport function a(): string { return "a"; }'),
  ...['utils', 'helpers', 'common', 'manager', 'types'].map((name) =>
    named('fillwright/file-names', `${ENGINE}/${name}.ts`, 'export const a = "a";'),
  ),
  named('fillwright/file-names', `${APP}/utils.ts`, 'export const a = "a";'),
  named('fillwright/file-names', `${ENGINE}/fillMass.ts`, 'export const a = "a";'),
  ...everywhere('fillwright/suppression-reason', [ENGINE, APP], '/* eslint-disable */\nexport const a = "a";'),
];

const sizes = [
  breach(
    'max-lines',
    ENGINE,
    lines(301, (i) => `export const a${i} = "a";`),
  ),
  breach('max-lines-per-function', ENGINE, `export function a(): void {\n${lines(61, (i) => `void ${i};`)}\n}`),
  breach(
    'complexity',
    ENGINE,
    `export function a(b: string): void {\n${lines(12, (i) => `if (b === "${i}") return;`)}\n}`,
  ),
  breach(
    'max-params',
    ENGINE,
    'export function a(b: string, c: string, d: string, e: string): string { return b + c + d + e; }',
  ),
  breach('@typescript-eslint/explicit-module-boundary-types', STATS, 'export function a() { return 1; }'),
  breach('@typescript-eslint/no-explicit-any', STATS, 'export const a: any = 1;'),
  breach('@typescript-eslint/no-floating-promises', APP, 'Promise.resolve(1);'),
];

async function run(copy) {
  const args = ['packages/*/src/**/seeded-*.ts', 'apps/*/src/**/seeded-*.ts', ...filesByName(), '--format', 'json'];
  const files = JSON.parse(await runTool(copy, 'eslint', args));
  const found = files.flatMap(({ filePath, messages }) =>
    messages.map(({ ruleId, message }) => `${ruleId ?? message} ${relative(copy, filePath)}`),
  );
  return { found };
}

const breaches = [...restricted, ...own, ...sizes];

function filesByName() {
  return breaches.map(({ file }) => file).filter((file) => !file.includes('/seeded-'));
}

export const lint = { breaches, run };
