import { isAlias, isMap, isNode, isScalar, isSeq, type Document, type Node, type Pair } from 'yaml';

/** A number without unit: characters from the start of the text. */
export type Offset = number;

/** The node of a field and where it starts; the nearest one around it when the field is not there. */
interface Found {
  readonly node: Node | undefined;
  readonly offset: Offset;
  readonly isExact: boolean;
}

/**
 * The node that stands at a field.
 *
 * @param document - the document
 * @param field - path joined by points
 * @returns the node, or undefined when the field is not there
 */
export function nodeAt(document: Document, field: string): Node | undefined {
  const found = find(document, field);
  return found.isExact ? found.node : undefined;
}

/**
 * Where a field stands in the text: its key, or its item of a list; else the nearest one around it.
 *
 * @param document - the document
 * @param field - path joined by points
 * @returns offset from the start of the text
 */
export function fieldOffset(document: Document, field: string): Offset {
  return find(document, field).offset;
}

/**
 * What was written for a scalar: the characters of a plain one, the content of a quoted one.
 *
 * @param node - a node
 * @returns the text, or undefined for anything else
 */
export function sourceOf(node: Node | undefined): string | undefined {
  if (!isScalar(node)) return undefined;
  return node.type === 'PLAIN' && node.source !== undefined ? node.source : String(node.value);
}

function find(document: Document, field: string): Found {
  const start = document.contents?.range?.[0] ?? 0;
  let found: Found = { node: document.contents ?? undefined, offset: start, isExact: field === '' };
  let rest = field;
  while (rest !== '') {
    const step = stepInto(document, found.node, rest);
    if (!step) return { ...found, isExact: false };
    rest = rest.slice(step.length + 1);
    found = { node: step.node, offset: step.offset ?? found.offset, isExact: rest === '' };
  }
  return found;
}

interface Step {
  readonly node: Node | undefined;
  readonly offset: Offset | undefined;
  /** Characters of the field that the step takes. */
  readonly length: number;
}

function stepInto(document: Document, node: Node | undefined, rest: string): Step | undefined {
  const inside = isAlias(node) ? node.resolve(document) : node;
  if (isMap(inside)) {
    const fitting = inside.items
      .filter((pair) => `${rest}.`.startsWith(`${keyText(pair)}.`))
      .sort((a, b) => keyText(b).length - keyText(a).length)[0];
    if (!fitting) return undefined;
    const offset = isNode(fitting.key) ? fitting.key.range?.[0] : undefined;
    return { node: isNode(fitting.value) ? fitting.value : undefined, offset, length: keyText(fitting).length };
  }
  if (!isSeq(inside)) return undefined;
  const [index = ''] = rest.split('.', 1);
  const item = /^\d+$/.test(index) ? inside.items[Number(index)] : undefined;
  return isNode(item) ? { node: item, offset: item.range?.[0], length: index.length } : undefined;
}

/**
 * The key of a pair as plain data has it.
 *
 * @param pair - a pair of a mapping
 * @returns the key as text
 */
export function keyText({ key }: Pair): string {
  if (!isScalar(key)) return isNode(key) ? key.toString() : '';
  return typeof key.value === 'string' ? key.value : (key.source ?? '');
}
