export { CauseGrid } from './cause-grid.tsx';
export { DotPlot } from './dot-plot.tsx';
export { useWidth } from './use-width.ts';
