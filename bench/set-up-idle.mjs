import { output, wallOfProcess } from './child.mjs';

const SET_UP = ['tools/setup.mjs'];

/** The set-up when there is nothing to do: what every start pays. */
export function round() {
  output(process.execPath, SET_UP);
  return [
    {
      figure: 'whole process',
      unit: 'ms',
      wall_ms: wallOfProcess(process.execPath, SET_UP),
      aim: { kind: 'wall', limit: 200 },
    },
  ];
}
