import { weightsAnswer } from './weights-answer.ts';
import type { WeightsCall, WeightsReply } from './weights-calls.ts';

self.addEventListener('message', ({ data: { id, ...question } }: MessageEvent<WeightsCall>) => {
  const reply: WeightsReply = { id, ...weightsAnswer(question) };
  self.postMessage(reply);
});
