import { wallOfProcess } from './child.mjs';

const ARGS = ['design', 'examples/alder-200.brief.yaml'];

/** The command as a whole process, from start to exit. */
export function round() {
  return [
    { figure: 'npx fillwright design', unit: 'ms', wall_ms: wallOfProcess('npx', ['fillwright', ...ARGS]) },
    {
      ...{ figure: 'node apps/fillwright/bin/fillwright.mjs design', unit: 'ms' },
      wall_ms: wallOfProcess(process.execPath, ['apps/fillwright/bin/fillwright.mjs', ...ARGS]),
    },
  ];
}
