import { useSyncExternalStore, type ReactNode } from 'react';
import { emitter } from '../state/emitter.ts';

const REST_ms = 500;
const said = emitter('');
let timer: ReturnType<typeof setTimeout> | undefined;

/** Says one sentence to a screen reader, half a second after the last one asked for: a moving lever is not read out. */
export function announce(text: string): void {
  clearTimeout(timer);
  timer = setTimeout(() => {
    said.set(text);
  }, REST_ms);
}

/** The place a screen reader listens to; once per page. */
export function Announcer(): ReactNode {
  const text = useSyncExternalStore(said.subscribe, said.get);
  return (
    <div className="hidden-text" role="status" aria-live="polite">
      {text}
    </div>
  );
}
