import type { ReactNode } from 'react';
import { FILL_WORDS } from '@fillwright/words/en';
import { AttentionMark } from '../attention-mark.tsx';
import { fixed } from '../figures.ts';
import type { DrawnSetUp } from '../method-drawing.ts';
import { NumberButton } from '../number-button.tsx';
import { largestSlugs } from './largest-slugs.ts';
import './largest-slugs-axis.css';

/** Margins of the axis beyond the lightest and the heaviest, as shares of its length. */
const MARGIN = 0.08;

/** One axis of mass: what each shell of the brief holds at most, and where this slug lies. */
export function LargestSlugsAxis({ setUp }: { readonly setUp: DrawnSetUp }): ReactNode {
  const slugs = largestSlugs(setUp);
  const { mass_mg } = setUp.candidate.prediction;
  const own = slugs.find(({ size }) => size === setUp.candidate.size);
  if (!own) return null;
  const masses = [mass_mg, ...slugs.map((slug) => slug.mass_mg)];
  const [least, most] = [Math.min(...masses), Math.max(...masses)];
  const left = (mg: number): string =>
    `${(100 * (MARGIN + ((1 - 2 * MARGIN) * (mg - least)) / Math.max(1, most - least))).toFixed(1)}%`;
  const isOver = mass_mg > own.mass_mg;
  const text = FILL_WORDS.largestOf({ mass: fixed(mass_mg, 0), most: fixed(own.mass_mg, 0) });
  return (
    <div className="largest">
      <div className="largest-title">
        {FILL_WORDS.largest}{' '}
        <span className={isOver ? 'attention' : 'quiet'}>
          {isOver ? <AttentionMark /> : null} {text}
        </span>
      </div>
      <div className="largest-axis">
        {slugs.map((slug) => (
          <span
            key={slug.size}
            className={slug === own ? 'largest-mark largest-own' : 'largest-mark'}
            style={{ left: left(slug.mass_mg) }}
          >
            <span>{slug.size}</span>
            <NumberButton number={`largest:${slug.size}`} className="quiet">
              {fixed(slug.mass_mg, 0)}
            </NumberButton>
          </span>
        ))}
        <span className="largest-here" style={{ left: left(mass_mg) }} />
      </div>
    </div>
  );
}
