import { detailsOf, placesOf, search, candidateAt, type SearchInput } from '@fillwright/engine/design';
import { targetFill } from '@fillwright/engine/brief';
import type { DesignAnswer, DesignCall } from './design-calls.ts';
import type { Choice } from './workbench-state.ts';

self.addEventListener('message', ({ data }: MessageEvent<DesignCall>) => {
  self.postMessage(answerTo(data));
});

function answerTo(call: DesignCall): DesignAnswer {
  try {
    if (call.kind === 'search') return { id: call.id, kind: 'search', design: search(call.input) };
    return { id: call.id, kind: 'details', details: details(call.input, call.choice) };
  } catch (error) {
    return { id: call.id, kind: 'refused', why: error instanceof Error ? error.message : String(error) };
  }
}

function details(input: SearchInput, choice: Choice): Extract<DesignAnswer, { kind: 'details' }>['details'] {
  const place = placesOf(input).places.find(
    ({ record, method }) => record.size === choice.size && method.id === choice.method,
  );
  if (!place) throw new Error(`no place for size ${choice.size}`);
  const candidate = candidateAt(input, place, choice.settings);
  return detailsOf(input, place, { candidate, target: targetFill(input.brief.parts[0].target) });
}
