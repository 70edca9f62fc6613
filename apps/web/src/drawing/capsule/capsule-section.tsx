import { memo, useId, useMemo, type ReactNode } from 'react';
import type { Prediction } from '@fillwright/engine/dosing';
import type { Powder } from '@fillwright/engine/materials';
import { rounded as r } from '../at-mm.ts';
import { powderShade } from '../powder-shade.ts';
import type { CapsuleLayout, GhostShell } from './capsule-layout.ts';
import { halfOutline, shellPaths } from './shell-paths.ts';
import './capsule.css';

interface CapsuleSectionProps {
  readonly layout: CapsuleLayout;
  readonly ghosts: readonly GhostShell[];
  readonly profile: Prediction['profile'];
  readonly powder: Powder;
  /** Top of the slug before the move. */
  readonly beforeTop_mm: number | undefined;
}

/** The locked shell in section with its slug, axis at x = 0 and the slug's lower face at y = 0, in mm. */
export const CapsuleSection = memo(function CapsuleSection(props: CapsuleSectionProps): ReactNode {
  const { layout, ghosts, profile, powder, beforeTop_mm } = props;
  const { shell, slugRadius_mm, slugTop_mm, tipBelow_mm } = layout;
  const paths = useMemo(() => shellPaths(shell), [shell]);
  const shade = useId();
  return (
    <g className="capsule">
      <linearGradient id={shade} x1="0" y1="0" x2="0" y2="1">
        {profile.map(({ depth_frac, density_g_per_mL }, i) => (
          <stop key={i} offset={r(depth_frac)} style={{ stopColor: powderShade(powder, density_g_per_mL) }} />
        ))}
      </linearGradient>
      <g transform={`translate(0 ${r(tipBelow_mm)})`}>
        <path d={paths.inside} className="capsule-void" />
      </g>
      <rect
        className="capsule-slug"
        x={r(-slugRadius_mm)}
        y={r(-slugTop_mm)}
        width={r(2 * slugRadius_mm)}
        height={r(slugTop_mm)}
        fill={`url(#${shade})`}
      />
      {beforeTop_mm === undefined ? null : (
        <path className="drawing-before" d={`M${r(-slugRadius_mm)} ${r(-beforeTop_mm)}H${r(slugRadius_mm)}`} />
      )}
      <g transform={`translate(0 ${r(tipBelow_mm)})`}>
        {ghosts.map(({ size, section }) => (
          <path key={size} className="capsule-ghost" d={halfOutline(section)} />
        ))}
        <path d={paths.body} className="capsule-wall" />
        <path d={paths.cap} className="capsule-wall" />
        <path d={`M0 ${r(-shell.closed_mm - 0.6)}V0.5`} className="drawing-axis" />
      </g>
    </g>
  );
});
