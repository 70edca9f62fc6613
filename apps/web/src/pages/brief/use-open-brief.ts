import { BRIEF_PAGE_WORDS } from '@fillwright/words/en';
import { useNavigate } from '@tanstack/react-router';
import { useState } from 'react';
import { announce } from '../../shell/announcer.tsx';
import { exampleText } from '../../state/documents-client.ts';
import { useWorkbench, workbench } from '../../state/index.ts';
import { briefDocument } from './brief-document.ts';
import { problemText, readBriefFile, valueIn } from '../../briefs/index.ts';

export interface OpenBrief {
  readonly file: (file: File) => void;
  readonly example: (name: string) => void;
  /** What became of the last one, as one sentence, until the brief is changed. */
  readonly said: string | undefined;
}

/**
 * Opens a brief from a file or an example. A file of the same product takes the place of the text, as one step of undo;
 * another product is opened beside this one.
 */
export function useOpenBrief(): OpenBrief {
  const [said, setSaid] = useState<{ readonly sentence: string; readonly text: string }>();
  const text = useWorkbench((state) => state.text);
  const navigate = useNavigate();
  const say = (sentence: string): void => {
    setSaid({ sentence, text: workbench.state().text });
    announce(sentence);
  };
  const beside = async (other: string): Promise<void> => {
    const id = await workbench.create(other);
    await navigate({ to: '/products/$id/brief', params: { id } });
  };
  const open = async (file: File): Promise<void> => {
    const read = await readBriefFile(file);
    if (!read.ok) {
      say(read.sentence);
      return;
    }
    const isSame = codeOf(read.text) === codeOf(workbench.state().text);
    if (isSame) workbench.setText(read.text);
    else await beside(read.text);
    say(isSame ? BRIEF_PAGE_WORDS.opened(file.name) : BRIEF_PAGE_WORDS.openedOther(file.name));
  };
  const fail = (error: unknown): void => {
    say(problemText(error));
  };
  return {
    said: said?.text === text ? said.sentence : undefined,
    file: (file) => {
      open(file).catch(fail);
    },
    example: (name) => {
      exampleText(name).then(beside).catch(fail);
    },
  };
}

function codeOf(text: string): unknown {
  return valueIn(briefDocument(text).value, ['product', 'code']);
}
