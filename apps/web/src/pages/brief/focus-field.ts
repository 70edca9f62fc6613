import { controlId, pathOf } from './field-path.ts';

/**
 * Leads to the control of a field, or to the nearest one around it; what is folded away is opened.
 *
 * @param field - path joined by points
 * @returns whether there is one
 */
export function focusField(field: string): boolean {
  const path = pathOf(field);
  for (let depth = path.length; depth > 0; depth--) {
    const control = document.getElementById(controlId(path.slice(0, depth)));
    if (!control) continue;
    for (let fold = control.closest('details'); fold; fold = fold.parentElement?.closest('details') ?? null)
      fold.open = true;
    control.scrollIntoView({ block: 'center' });
    control.focus({ preventScroll: true });
    return true;
  }
  return false;
}
