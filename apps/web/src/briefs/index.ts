export { ComparedTexts } from './compared-texts.tsx';
export { FileButton } from './file-button.tsx';
export { problemText } from './problem-text.ts';
export { readBriefFile } from './read-brief-file.ts';
export { saveSentence } from './save-sentence.ts';
export { timeText } from './time-text.ts';
export { useDropFile } from './use-drop-file.ts';
export { valueIn } from './value-in.ts';
