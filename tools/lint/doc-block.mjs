/** Every exported function has a doc block with the tags asked for, each followed by words. */
export const docBlock = {
  meta: {
    type: 'problem',
    schema: [{ type: 'object', properties: { tags: { type: 'array', items: { type: 'string' } } } }],
    defaultOptions: [{ tags: ['returns', 'throws', 'source'] }],
    messages: { missing: '"{{name}}" needs a doc block with {{tags}}.' },
  },
  create: (context) => ({
    ExportNamedDeclaration(node) {
      const name = functionName(node.declaration);
      if (name === undefined || isLaterOverload(node, name)) return;
      const last = context.sourceCode.getCommentsBefore(node).at(-1);
      const text = last?.type === 'Block' && last.value.startsWith('*') ? last.value : '';
      const missing = context.options[0].tags.filter((tag) => !new RegExp(`(?:^|\\s)@${tag}[ \\t]+\\S`).test(text));
      if (missing.length > 0)
        context.report({
          node: node.declaration,
          messageId: 'missing',
          data: { name, tags: missing.map((tag) => `@${tag}`).join(', ') },
        });
    },
  }),
};

function functionName(declaration) {
  if (declaration?.type === 'FunctionDeclaration' || declaration?.type === 'TSDeclareFunction')
    return declaration.id.name;
  const first = declaration?.type === 'VariableDeclaration' ? declaration.declarations[0] : undefined;
  return /^(Arrow)?FunctionExpression$/.test(first?.init?.type ?? '') ? first.id.name : undefined;
}

/** Overloads are described once, at the first of them. */
function isLaterOverload(node, name) {
  const before = node.parent.body[node.parent.body.indexOf(node) - 1];
  return before?.declaration?.type === 'TSDeclareFunction' && before.declaration.id.name === name;
}
