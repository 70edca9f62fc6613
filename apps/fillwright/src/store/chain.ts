import type { DocumentKind, DocumentVersion } from '@fillwright/contract/documents';

/** What one hash chain is about: outside a lot, one document of one site. */
export interface Chain {
  readonly site: string;
  readonly kind: DocumentKind;
  readonly id: string;
}

/** One version as it is kept. */
export interface StoredVersion extends DocumentVersion {
  readonly site: string;
}
