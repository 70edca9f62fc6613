/** A text that is not yet acknowledged by the server, kept in this browser so that nothing typed is lost. */
export interface KeptText {
  readonly text: string;
  /** Version on the server it was based on. */
  readonly basedOn: number;
}

const key = (id: string): string => `fillwright.kept.${id}`;

/** @returns what is kept of a document, or undefined */
export function keptText(id: string): KeptText | undefined {
  const found = localStorage.getItem(key(id));
  if (found === null) return undefined;
  try {
    const { text, basedOn } = JSON.parse(found) as Partial<KeptText>;
    return typeof text === 'string' && typeof basedOn === 'number' ? { text, basedOn } : undefined;
  } catch {
    return undefined;
  }
}

export function keepText(id: string, kept: KeptText): void {
  localStorage.setItem(key(id), JSON.stringify(kept));
}

export function forgetText(id: string): void {
  localStorage.removeItem(key(id));
}
