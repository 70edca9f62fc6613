import { runTool } from './run-tool.mjs';

const breaches = ['packages/engine/src/catalogue', 'apps/fillwright/src', 'tools', 'docs'].map((folder) => ({
  rule: 'unformatted',
  file: `${folder}/seeded-format.${folder === 'docs' ? 'md' : 'mjs'}`,
  text: folder === 'docs' ? '*  a' : 'export const  a = "a"',
}));

async function run(copy) {
  const args = ['--list-different', ...breaches.map(({ file }) => file)];
  const text = await runTool(copy, 'prettier', args);
  return { found: text.split('\n').map((file) => `unformatted ${file}`) };
}

export const format = { breaches, run };
