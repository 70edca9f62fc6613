import type { Brief, Design } from '@fillwright/engine/design';
import { DESIGN_WORDS } from '@fillwright/words/en';
import { wrapped } from '../layout.ts';
import { capsuleDrawing } from './capsule-drawing.ts';
import { limitCardText } from './limit-card-text.ts';
import { outlookText } from './outlook-text.ts';
import { rankingText } from './ranking-text.ts';
import { rejectionsText } from './rejections-text.ts';
import { settingSheetText } from './setting-sheet-text.ts';
import { targetText } from './target-text.ts';

export interface DesignTextInput {
  readonly brief: Brief;
  readonly design: Design;
  /** Rank of the set-up whose sheet is printed. */
  readonly rank: number;
  /** Every rejected set of parts by itself. */
  readonly isEachRejection: boolean;
  readonly notices: readonly string[];
}

/**
 * The whole design as text: target, ranking, reasons, one set-up in full, cautions.
 *
 * @param input - brief, result and what to show of it
 * @returns the text
 */
export function designText({ brief, design, rank, isEachRejection, notices }: DesignTextInput): string {
  const { product, filler, seed } = design;
  const chosen = design.candidates.find((candidate) => candidate.rank === rank);
  const bulleted = (title: string, texts: readonly string[]): string =>
    texts.length === 0 ? '' : [title, ...texts.map((text) => wrapped('  - ', text))].join('\n');
  return [
    `${product.code} ${product.name} - ${filler.name}, seed ${seed}`,
    targetText(brief, design),
    bulleted(DESIGN_WORDS.notices, notices),
    design.candidates.length > 0 ? rankingText(brief, design) : '',
    rejectionsText(design, isEachRejection),
    ...(chosen
      ? [settingSheetText(brief, chosen), limitCardText(chosen), capsuleDrawing(chosen), outlookText(chosen)]
      : []),
    bulleted(DESIGN_WORDS.cautions, [...(brief.cautions ?? []), ...DESIGN_WORDS.usualCautions]),
  ]
    .filter((text) => text !== '')
    .join('\n\n');
}
