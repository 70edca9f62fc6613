import type { InputFault } from '@fillwright/engine/catalogue';
import { isAlias, isMap, isNode, isScalar, isSeq, type Document, type Pair, type YAMLMap } from 'yaml';
import { keyText, sourceOf, type Offset } from './yaml-places.ts';

/** A fault of a key, by its offset in the text. */
export type KeyFault = InputFault & { readonly offset: Offset; readonly firstOffset: Offset };

/**
 * Keys that are given twice. Before that, `{mean: 0,54}`, which YAML reads as `mean: 0` and a key `54`, is put back to
 * the text `0,54` that was written, so that the schema refuses it as a decimal comma.
 *
 * @param document - the document; decimal commas are put back
 * @returns the faults, with their offsets in the text
 */
export function keyFaults(document: Document): readonly KeyFault[] {
  const faults: KeyFault[] = [];
  visit(document.contents, '', faults);
  return faults;
}

function visit(node: unknown, path: string, faults: KeyFault[]): void {
  if (isAlias(node)) return;
  if (isSeq(node))
    node.items.forEach((item, index) => {
      visit(item, `${path}${index}.`, faults);
    });
  if (!isMap(node)) return;
  if (node.flow === true) putBackDecimalCommas(node);
  const seen = new Map<string, number>();
  for (const pair of node.items) {
    const key = keyText(pair);
    const offset = offsetOf(pair);
    const firstOffset = seen.get(key);
    if (firstOffset === undefined) seen.set(key, offset);
    else faults.push({ code: 'duplicate-key', field: path + key, offset, firstOffset });
    visit(pair.value, `${path}${key}.`, faults);
  }
}

function putBackDecimalCommas(map: YAMLMap): void {
  for (let i = map.items.length - 1; i > 0; i--) {
    const [before, pair] = [map.items[i - 1], map.items[i]];
    if (!before || !pair || pair.value !== null || !isScalar(pair.key) || !isScalar(before.value)) continue;
    const [whole, decimals] = [sourceOf(before.value) ?? '', sourceOf(pair.key) ?? ''];
    if (!/^[+-]?\d+$/.test(whole) || !/^\d+$/.test(decimals)) continue;
    before.value.value = `${whole},${decimals}`;
    before.value.source = `${whole},${decimals}`;
    map.items.splice(i, 1);
  }
}

function offsetOf({ key }: Pair): number {
  return isNode(key) ? (key.range?.[0] ?? 0) : 0;
}
