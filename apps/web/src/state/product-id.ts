import { listDocuments } from './documents-client.ts';

const FALLBACK = 'product';

/**
 * A free document id for a new brief: its product code in lower case letters, digits and hyphens.
 *
 * @param text - the brief's text
 * @param kept - ids of which a text is kept in this browser: the server may not know them yet
 * @returns the id; numbered when the plain one is taken, with a random end when the server can't say which are taken
 */
export async function productId(text: string, kept: readonly string[]): Promise<string> {
  const code = /\bcode:\s*['"]?([^'",}\n]+)/.exec(text)?.[1] ?? FALLBACK;
  const plain =
    code
      .toLowerCase()
      .replace(/[^a-z0-9]+/g, '-')
      .replace(/^-+|-+$/g, '')
      .slice(0, 60) || FALLBACK;
  const stored = await listDocuments('brief').catch(() => undefined);
  if (stored === undefined) return `${plain}-${crypto.randomUUID().slice(0, 6)}`;
  const taken = new Set([...stored.map(({ id }) => id), ...kept]);
  if (!taken.has(plain)) return plain;
  for (let n = 2; ; n++) if (!taken.has(`${plain}-${String(n)}`)) return `${plain}-${String(n)}`;
}
