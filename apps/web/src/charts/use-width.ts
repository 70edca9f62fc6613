import { useEffect, useState, type RefCallback } from 'react';

type Pixels = number;

/**
 * The width of a part of the page, followed.
 *
 * @param first_px - until it is known
 * @returns the width, and the ref to hang on the part
 */
export function useWidth(first_px: Pixels): readonly [width_px: number, ref: RefCallback<HTMLElement>] {
  const [element, setElement] = useState<HTMLElement | null>(null);
  const [width_px, setWidth] = useState(first_px);
  useEffect(() => {
    if (!element) return undefined;
    const observer = new ResizeObserver(([entry]) => {
      // While it is not displayed it has no width.
      if (entry && entry.contentRect.width > 0) setWidth(Math.round(entry.contentRect.width));
    });
    observer.observe(element);
    return () => {
      observer.disconnect();
    };
  }, [element]);
  return [width_px, setElement];
}
