import { fileDocument } from '@fillwright/contract/documents';
import { yamlText } from '@fillwright/contract/files';
import { FILE_WORDS } from '@fillwright/words/en';
import { useEffect, useState } from 'react';
import { fileName, valueIn } from '../../../briefs/index.ts';
import type { Choice } from '../../../fields/index.ts';
import { listDocuments, listExamples, newestVersion } from '../../../state/documents-client.ts';

/** As many fillers are read for their names; the others are listed by their file. */
const MOST_NAMES = 40;

/**
 * The fillers that a brief can name: those that are kept, then the examples that none of them stands in for.
 *
 * @param key - they are looked up again when it changes
 * @returns choices whose values are paths; without what the server did not say
 */
export function useFillers(key: string): readonly Choice[] {
  const [fillers, setFillers] = useState<readonly Choice[]>([]);
  useEffect(() => {
    let isOver = false;
    Promise.all([kept(), examples()]).then(
      ([own, others]) => {
        const taken = new Set(own.map(({ value }) => value));
        if (!isOver) setFillers([...own, ...others.filter(({ value }) => !taken.has(value))]);
      },
      // The path can still be typed; that the server does not answer is said beside the tabs.
      () => undefined,
    );
    return () => {
      isOver = true;
    };
  }, [key]);
  return fillers;
}

/** @returns the choice that stands for a path, however it is written */
export function choiceOfPath(choices: readonly Choice[], path: string): string | undefined {
  const id = fileDocument(path)?.id;
  return choices.find(({ value }) => value === path || (id !== undefined && fileDocument(value)?.id === id))?.value;
}

async function kept(): Promise<readonly Choice[]> {
  const heads = await listDocuments('filler');
  return Promise.all(
    heads.map(async ({ id }, index) => {
      const file = fileName({ kind: 'filler', id });
      const text = index < MOST_NAMES ? (await newestVersion('filler', id)).text : '';
      const name = valueIn(yamlText(text).value, ['name']);
      return { value: `./${file}`, text: typeof name === 'string' ? FILE_WORDS.optionOf(name, file) : file };
    }),
  );
}

async function examples(): Promise<readonly Choice[]> {
  return (await listExamples('filler')).map(({ name, title }) => ({
    value: `./${name}`,
    text: FILE_WORDS.exampleOf(title),
  }));
}
