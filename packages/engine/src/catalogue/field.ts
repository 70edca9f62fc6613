/** A bound in the unit of its own field. */
type Bound = number;

interface FieldBase {
  /** Name with unit suffix, the same in TypeScript, YAML, JSON, column and flag. */
  readonly key: string;
  /** One short phrase: what the quantity is. */
  readonly title: string;
  /** A list of such values, with its least and greatest length. */
  readonly list?: { readonly min: Bound; readonly max: Bound };
  readonly optional?: true;
}

export interface NumberField extends FieldBase {
  readonly kind: 'number' | 'integer';
  /** Unit as printed, `1` for a pure number. */
  readonly unit: string;
  /** Least value allowed. */
  readonly min?: Bound;
  /** Greatest value allowed. */
  readonly max?: Bound;
  /** The value must be strictly above this. */
  readonly above?: Bound;
  /** The value must be strictly below this. */
  readonly below?: Bound;
}
interface TextField extends FieldBase {
  readonly kind: 'text';
}
export interface ChoiceField extends FieldBase {
  readonly kind: 'choice';
  readonly choices: readonly string[];
}
export interface FlagField extends FieldBase {
  readonly kind: 'flag';
}
interface GroupField extends FieldBase {
  readonly kind: 'group';
  readonly fields: readonly Field[];
}

/** Description of one input or output of a catalogue entry, as plain data. */
export type Field = NumberField | TextField | ChoiceField | FlagField | GroupField;

type Scalar<F extends Field> = F extends { kind: 'number' | 'integer' }
  ? number
  : F extends { kind: 'choice'; choices: readonly (infer C)[] }
    ? C
    : F extends { kind: 'flag' }
      ? boolean
      : F extends { kind: 'group'; fields: infer G extends readonly Field[] }
        ? ValuesOf<G>
        : string;
type Value<F extends Field> = F extends { list: object } ? readonly Scalar<F>[] : Scalar<F>;

/** The TypeScript type of the values that a list of fields describes. */
export type ValuesOf<Fs extends readonly Field[]> = {
  readonly [F in Fs[number] as F extends { optional: true } ? never : F['key']]: Value<F>;
} & { readonly [F in Fs[number] as F extends { optional: true } ? F['key'] : never]?: Value<F> };
