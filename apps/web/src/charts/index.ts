export { CauseGrid } from './cause-grid.tsx';
export { DotPlot, type DotPlotProps, type PlotLimits } from './dot-plot.tsx';
export { useWidth } from './use-width.ts';
