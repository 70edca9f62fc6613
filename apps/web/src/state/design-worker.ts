import { designAnswer } from './design-answer.ts';
import type { DesignCall } from './design-calls.ts';

self.addEventListener('message', ({ data }: MessageEvent<DesignCall>) => {
  self.postMessage(designAnswer(data));
});
