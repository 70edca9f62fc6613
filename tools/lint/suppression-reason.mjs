/** A check may be switched off for a line only by name and with the reason behind ` -- `. */
export const suppressionReason = {
  meta: {
    type: 'problem',
    schema: [],
    messages: { reason: 'Line {{line}}: name the rule and say why: "eslint-disable-next-line <rule> -- <reason>".' },
  },
  create: (context) => ({
    Program() {
      for (const { value, loc } of context.sourceCode.getAllComments()) {
        if (!/^\s*eslint-disable/.test(value)) continue;
        // Line 0 comes before any comment: a blanket "eslint-disable" cannot silence this rule.
        if (!/^\s*eslint-disable(?:-next-line|-line)\s+\S.*\s--\s+\S/.test(value))
          context.report({ loc: { line: 0, column: 0 }, messageId: 'reason', data: { line: String(loc.start.line) } });
      }
    },
  }),
};
