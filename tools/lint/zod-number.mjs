const NUMBERS = new Set(['number', 'int', 'int32', 'uint32', 'float32', 'float64']);
const AROUND = new Set(['array', 'tuple', 'optional', 'exactOptional', 'nullable', 'nullish', 'readonly', 'union']);

/** Whether an expression is a schema of a number or of a list of numbers: `z.number().min(0)`, `z.array(z.int())`. */
export function isZodNumber(node) {
  if (node?.type === 'ArrayExpression') return node.elements.some(isZodNumber);
  if (node?.type !== 'CallExpression' || node.callee.type !== 'MemberExpression') return false;
  const { object, property } = node.callee;
  if (object.type === 'CallExpression') return property.name !== 'transform' && isZodNumber(object);
  if (isCoercion(object)) return property.name === 'number';
  return (
    object.name === 'z' &&
    (NUMBERS.has(property.name) || (AROUND.has(property.name) && node.arguments.some(isZodNumber)))
  );
}

/** `z.coerce` */
function isCoercion(node) {
  return node.type === 'MemberExpression' && node.object.name === 'z' && node.property.name === 'coerce';
}
