import type { Page } from 'playwright-core';

const LEAST_TEXT_px = 14;
/** WCAG 2.2, success criterion 2.5.8 (target size, minimum). */
const LEAST_TARGET_px = 24;
/** Half a pixel: boxes of a browser are not whole. */
const SLACK_px = 0.5;

/**
 * What is too small or too wide on the screen, in words: text, targets, the page itself. What is drawn as paper may be
 * smaller, and a link within a sentence is as high as its line (exception "inline" of 2.5.8).
 */
export function screenFaults(page: Page): Promise<readonly string[]> {
  const least = { text_px: LEAST_TEXT_px - SLACK_px, target_px: LEAST_TARGET_px - SLACK_px };
  return page.evaluate(({ text_px, target_px }) => {
    const isSeen = (element: Element): boolean => {
      const { width, height } = element.getBoundingClientRect();
      return width > 1 && height > 1 && element.checkVisibility({ visibilityProperty: true, opacityProperty: true });
    };
    const named = (element: Element): string =>
      `${element.tagName.toLowerCase()} "${(element.getAttribute('aria-label') ?? element.textContent).trim().slice(0, 40)}"`;
    const sizeOf = (element: Element): number => {
      const scale = element instanceof SVGGraphicsElement ? (element.getScreenCTM()?.a ?? 1) : 1;
      return parseFloat(getComputedStyle(element).fontSize) * scale;
    };
    const texts = [...document.body.querySelectorAll('*')].filter(
      (element) =>
        [...element.childNodes].some((node) => node.nodeType === Node.TEXT_NODE && node.textContent?.trim()) &&
        !element.closest('math, article, option, .hidden-text') &&
        isSeen(element),
    );
    const small = texts
      .filter((element) => sizeOf(element) < text_px)
      .map((element) => `text of ${sizeOf(element).toFixed(1)} px: ${named(element)}`);
    const targets = document.body.querySelectorAll(
      'button, a[href], input, select, textarea, summary, [role="slider"], [role="tab"]',
    );
    const inSentence = (element: Element): boolean =>
      getComputedStyle(element).display === 'inline' &&
      [...(element.parentElement?.childNodes ?? [])].some(
        (node) => node.nodeType === Node.TEXT_NODE && node.textContent?.trim(),
      );
    const tight = [...targets]
      .map((element) => element.closest('label') ?? element)
      .filter((element) => isSeen(element) && !element.closest('article') && !inSentence(element))
      .filter((element) => {
        const { width, height } = element.getBoundingClientRect();
        return width < target_px || height < target_px;
      })
      .map((element) => {
        const { width, height } = element.getBoundingClientRect();
        return `target of ${width.toFixed(0)} x ${height.toFixed(0)} px: ${named(element)}`;
      });
    const { scrollWidth, clientWidth } = document.documentElement;
    const wide = scrollWidth > clientWidth ? [`page of ${String(scrollWidth)} px in ${String(clientWidth)}`] : [];
    return [...new Set([...small, ...tight, ...wide])];
  }, least);
}
