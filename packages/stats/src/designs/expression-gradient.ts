import { cos, exp, log, log10, pow, sin, StatsError } from '#elementary';
import { arcTangent } from './arc-tangent.ts';
import type { Expression, FunctionName } from './read-expression.ts';

/** Value of a formula and its derivatives by the parameters. */
interface Gradient {
  readonly value: number;
  /** One per parameter. */
  readonly slopes: readonly number[];
}

/** A formula ready to be computed. */
export type GradientFunction = (point: {
  readonly parameters: readonly number[];
  readonly variables: readonly number[];
}) => Gradient;

/**
 * Turns a formula into a function that gives its value and its exact derivatives (forward differentiation).
 *
 * @param task - expression; names of the parameters, by which it is differentiated, and of the variables
 * @returns function of parameters and variables; where the formula has no value it gives NaN
 * @throws StatsError "not-readable" (unknownNameCount: names that are neither parameter nor variable)
 * @source chain rule
 */
export function expressionGradient(task: {
  readonly expression: Expression;
  readonly parameters: readonly string[];
  readonly variables: readonly string[];
}): GradientFunction {
  const { expression, parameters, variables } = task;
  const names = [...parameters, ...variables];
  const unknown = namesIn(expression).filter((name) => !names.includes(name));
  if (unknown.length > 0) throw new StatsError('not-readable', { unknownNameCount: new Set(unknown).size });
  const none = parameters.map(() => 0);
  const axes = new Map(parameters.map((name, k) => [name, none.with(k, 1)]));
  return (point) => {
    const values = new Map(names.map((name, i) => [name, [...point.parameters, ...point.variables][i]!]));
    const at = (part: Expression): Gradient => {
      switch (part.kind) {
        case 'number':
          return { value: part.value, slopes: none };
        case 'name':
          return { value: values.get(part.name)!, slopes: axes.get(part.name) ?? none };
        case 'call':
          return called(part.function, at(part.argument));
        default:
          return combined(part.kind, at(part.left), at(part.right));
      }
    };
    return at(expression);
  };
}

function namesIn(part: Expression): string[] {
  if (part.kind === 'number') return [];
  if (part.kind === 'name') return [part.name];
  return part.kind === 'call' ? namesIn(part.argument) : [...namesIn(part.left), ...namesIn(part.right)];
}

function called(name: FunctionName, { value: x, slopes }: Gradient): Gradient {
  const [value, slope] = functionAt(name, x);
  return { value, slopes: slopes.map((one) => (one === 0 ? 0 : slope * one)) };
}

/** Value and derivative. */
function functionAt(name: FunctionName, x: number): readonly [number, number] {
  switch (name) {
    case 'exp':
      return [exp(x), exp(x)];
    case 'ln':
    case 'log':
      return [log(x), 1 / x];
    case 'log10':
      return [log10(x), 1 / (x * Math.LN10)];
    case 'sqrt':
      return [Math.sqrt(x), 0.5 / Math.sqrt(x)];
    case 'sin':
      return [sin(x), cos(x)];
    case 'cos':
      return [cos(x), -sin(x)];
    case 'arctan':
      return [arcTangent(x), 1 / (1 + x * x)];
  }
}

type Operation = Exclude<Expression['kind'], 'number' | 'name' | 'call'>;

function combined(kind: Operation, left: Gradient, right: Gradient): Gradient {
  const both = (value: number, slope: (a: number, b: number) => number): Gradient => ({
    value,
    slopes: left.slopes.map((a, k) => slope(a, right.slopes[k]!)),
  });
  switch (kind) {
    case 'sum':
      return both(left.value + right.value, (a, b) => a + b);
    case 'difference':
      return both(left.value - right.value, (a, b) => a - b);
    case 'product':
      return both(left.value * right.value, (a, b) => a * right.value + left.value * b);
    case 'quotient': {
      const value = left.value / right.value;
      return both(value, (a, b) => (a - value * b) / right.value);
    }
    case 'power': {
      const value = pow(left.value, right.value);
      const byBase = right.value === 0 ? 0 : right.value * pow(left.value, right.value - 1);
      const byExponent = value === 0 ? 0 : value * log(left.value);
      return both(value, (a, b) => (a === 0 ? 0 : byBase * a) + (b === 0 ? 0 : byExponent * b));
    }
  }
}
