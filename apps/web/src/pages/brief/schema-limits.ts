import type { NumberRange } from '../../fields/index.ts';

/** The parts of a JSON Schema that limits stand in. */
interface SchemaNode {
  readonly type?: string;
  readonly const?: unknown;
  readonly enum?: readonly unknown[];
  readonly properties?: Readonly<Record<string, SchemaNode>>;
  readonly required?: readonly string[];
  readonly items?: SchemaNode;
  readonly prefixItems?: readonly SchemaNode[];
  readonly anyOf?: readonly SchemaNode[];
  readonly oneOf?: readonly SchemaNode[];
  readonly minimum?: number;
  readonly maximum?: number;
  readonly exclusiveMinimum?: number;
  readonly exclusiveMaximum?: number;
  readonly maxItems?: number;
}

/** What the form of the file says of one value. */
export interface FieldLimits {
  readonly range: NumberRange;
  readonly isWhole: boolean;
  readonly canBeGuess: boolean;
  /** Whether it has to be given where what it belongs to is given. */
  readonly isRequired: boolean;
  readonly mostCount: number | undefined;
}

/**
 * Limits of a value, from the JSON Schema of the file, so that they are written once.
 *
 * @param schema - of the whole file
 * @param path - keys and list positions
 * @returns the limits; of a value that comes in several forms those of its plain number
 * @throws Error - no form of the file has such a value
 */
export function limitsAt(schema: unknown, path: readonly (string | number)[]): FieldLimits {
  let nodes: readonly SchemaNode[] = [schema as SchemaNode];
  let isRequired = true;
  for (const key of path) {
    const all = nodes.flatMap(formsOf);
    isRequired = all.every(
      ({ properties, required }) => properties?.[key] === undefined || required?.includes(String(key)) === true,
    );
    nodes = all.flatMap((node) => childOf(node, key) ?? []);
  }
  const forms = nodes.flatMap(formsOf);
  if (forms.length === 0) throw new Error(`no value ${path.join('.')} in the schema`);
  const number = forms.find(({ type }) => type === 'number' || type === 'integer') ?? {};
  return {
    range: rangeOf(number),
    isWhole: number.type === 'integer',
    canBeGuess: forms.some((form) => form.const === 'guess'),
    isRequired,
    mostCount: forms.find(({ type }) => type === 'array')?.maxItems,
  };
}

function formsOf(node: SchemaNode): readonly SchemaNode[] {
  const inner = node.anyOf ?? node.oneOf;
  return inner ? inner.flatMap(formsOf) : [node];
}

function childOf(node: SchemaNode, key: string | number): SchemaNode | undefined {
  if (typeof key === 'string') return node.properties?.[key];
  return node.prefixItems?.[key] ?? node.items;
}

function rangeOf(node: SchemaNode): NumberRange {
  return {
    ...(node.minimum === undefined ? {} : { min: node.minimum }),
    ...(node.maximum === undefined ? {} : { max: node.maximum }),
    ...(node.exclusiveMinimum === undefined ? {} : { above: node.exclusiveMinimum }),
    ...(node.exclusiveMaximum === undefined ? {} : { below: node.exclusiveMaximum }),
  };
}
