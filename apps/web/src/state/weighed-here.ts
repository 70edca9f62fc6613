import { emitter } from './emitter.ts';

/** How many weights a product's sheet has, as the page of weights last saw it. */
interface Weighed {
  readonly id: string;
  readonly count: number;
}

/** Told by the page of weights; the product's sentence hands it on. */
export const weighedHere = emitter<Weighed | undefined>(undefined);
