import type { Design } from '@fillwright/engine/design';
import type { Brief } from '@fillwright/engine/design';
import { DESIGN_WORDS, TARGET_WORDS } from '@fillwright/words/en';
import { wrapped } from '../layout.ts';
import { fixed, short } from './shown.ts';

/**
 * The target with its arithmetic, so that a second person can check it.
 *
 * @param brief - the brief
 * @param design - the result with the target
 * @returns the lines
 */
export function targetText(brief: Brief, { target }: Design): string {
  const rule = brief.parts[0].target;
  const lines = target.substances.map((at) => {
    const given = rule.substances.find(({ name }) => name === at.name);
    const mass =
      at.mass_mg === undefined || !given
        ? ''
        : `${fixed(at.mass_mg)} mg = ${short(given.claim_mg)} mg x ${short(given.saltFactor_ratio ?? 1)} x (1 + ${short(given.overage?.amount_pct ?? 0)} %) / (${short(given.assayAnhydrous_pct ?? 100)} % x (1 - ${short(given.water_pct ?? 0)} %)); `;
    const content =
      at.content_pct === undefined ? DESIGN_WORDS.contentAssumed : `mean content ${fixed(at.content_pct)} % of claim`;
    return wrapped(
      `  ${at.name}: `,
      `${mass}claim ${short(at.claim_mg)} mg, ${fixed(at.claimShare_pct)} % of the contents; ${content}`,
    );
  });
  const diluent = target.diluent_mg === undefined ? [] : [`  diluent: ${fixed(target.diluent_mg)} mg`];
  return [
    `${DESIGN_WORDS.target} ${fixed(target.fill_mg)} mg net (${TARGET_WORDS[target.rule]})`,
    ...lines,
    ...diluent,
  ].join('\n');
}
