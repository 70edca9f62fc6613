import type { DocumentKind } from '@fillwright/contract/documents';

/** Which document of this site. */
export interface DocumentName {
  readonly kind: DocumentKind;
  readonly id: string;
}
