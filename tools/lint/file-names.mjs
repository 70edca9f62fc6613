import { basename, dirname } from 'node:path';

const EMPTY_WORDS = /(?:^|-)(?:utils?|helpers?|common|managers?|types|misc)$/;
const KEBAB = /^[a-z0-9]+(?:-[a-z0-9]+)*$/;

/** A file says what is in it: kebab-case, and none of the words that could mean anything. */
export const fileNames = {
  meta: {
    type: 'problem',
    schema: [],
    messages: {
      empty: '"{{name}}" says nothing about what is in it: name it after the one thing it holds.',
      kebab: '"{{name}}" is not in kebab-case.',
    },
  },
  create: (context) => ({
    Program(node) {
      const [stem] = basename(context.filename).split('.');
      for (const name of [stem, basename(dirname(context.filename))])
        if (EMPTY_WORDS.test(name)) context.report({ node, messageId: 'empty', data: { name } });
      if (!KEBAB.test(stem)) context.report({ node, messageId: 'kebab', data: { name: stem } });
    },
  }),
};
