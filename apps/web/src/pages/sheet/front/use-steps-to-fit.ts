import { useEffect, useLayoutEffect, useState, type RefObject } from 'react';
import { SCALES } from '../paper/paper-scale.ts';

/** A4 upright, and CSS px per mm. */
const PAGE_mm = 297;
const PX_PER_MM = 96 / 25.4;
const ROUNDING_px = 1;

/**
 * By how many scales the drawing must be smaller so that its page stays one page. The page looks on screen as on paper, so
 * it can be measured there.
 *
 * @param side - the page
 * @param content - a new one is measured anew
 * @returns steps, 0 while everything fits
 */
export function useStepsToFit(side: RefObject<HTMLElement | null>, content: object): number {
  const [found, setFound] = useState({ content, steps: 0 });
  const steps = found.content === content ? found.steps : 0;
  useLayoutEffect(() => {
    const height_px = side.current?.scrollHeight ?? 0;
    if (height_px > PAGE_mm * PX_PER_MM + ROUNDING_px && steps < SCALES.length - 1)
      setFound({ content, steps: steps + 1 });
  }, [side, content, steps]);
  useEffect(() => {
    let isHere = true;
    void document.fonts.ready.then(() => {
      if (isHere) setFound({ content, steps: 0 });
    });
    return () => {
      isHere = false;
    };
  }, [content]);
  return steps;
}
