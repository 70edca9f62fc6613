import { listDocuments, newestVersion, ServerProblem } from './documents-client.ts';
import type { Found } from './held-document.ts';
import type { KeptTexts } from './kept-texts.ts';

/**
 * Looks up a product on the server and what of it is kept in this browser.
 *
 * @param id - of the product
 * @param texts - what is kept in this browser
 * @returns both, of the brief and of the design
 * @throws ServerProblem when there is no such product, or no server and nothing kept here
 */
export async function openingOf(
  id: string,
  texts: KeptTexts,
): Promise<{ readonly brief: Found; readonly design: Found }> {
  const brief = await newestBrief(id).catch((error: unknown) => {
    const mine = texts.take({ kind: 'brief', id });
    if (!mine) throw error;
    return error instanceof ServerProblem && error.status === 404 ? 'none' : 'unknown';
  });
  const design = await newestDesign(id);
  return {
    brief: { mine: texts.take({ kind: 'brief', id }), newest: brief },
    design: { mine: texts.take({ kind: 'design', id }), newest: design },
  };
}

const newestBrief = (id: string): Promise<Found['newest']> => newestVersion('brief', id);

/** Looked up in the list first: a product without a design is usual, and no fault to be reported. */
async function newestDesign(id: string): Promise<Found['newest']> {
  try {
    if (!(await listDocuments('design')).some((head) => head.id === id)) return 'none';
    return await newestVersion('design', id);
  } catch {
    return 'unknown';
  }
}
