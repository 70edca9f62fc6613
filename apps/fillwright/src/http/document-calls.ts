import type { DocumentKind, DocumentVersion, DocumentVersionHead, NewVersion } from '@fillwright/contract/documents';

/** Which document. */
export interface DocumentName {
  readonly kind: DocumentKind;
  readonly id: string;
}

/** What became of a version that was sent. */
export type SaveOutcome =
  | { readonly outcome: 'kept'; readonly version: DocumentVersion }
  /** A newer version is there than the one it was based on. */
  | { readonly outcome: 'newer'; readonly current: DocumentVersion }
  | { readonly outcome: 'reason-missing' }
  /** The text cannot be a saved version: one sentence for each thing that is wrong with it. */
  | { readonly outcome: 'not-in-order'; readonly sentences: readonly string[] };

/** What the interface asks of the use cases. */
export interface DocumentCalls {
  readonly list: (kind: DocumentKind) => Promise<readonly DocumentVersionHead[]>;
  readonly newest: (name: DocumentName) => Promise<DocumentVersion | undefined>;
  /** Oldest first; none when there is no such document. */
  readonly history: (name: DocumentName) => Promise<readonly DocumentVersionHead[]>;
  readonly version: (name: DocumentName, version: number) => Promise<DocumentVersion | undefined>;
  readonly save: (name: DocumentName, version: NewVersion) => Promise<SaveOutcome>;
}
