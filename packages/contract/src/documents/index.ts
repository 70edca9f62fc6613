export {
  DOCUMENT_KINDS,
  designChoiceSchema,
  documentIdSchema,
  documentKindSchema,
  LONGEST_TEXT,
  newVersionSchema,
  versionHeadSchema,
  versionSchema,
  type DesignChoice,
  type DocumentKind,
  type DocumentVersion,
  type DocumentVersionHead,
  type NamedKind,
  type NewVersion,
} from './document-schemas.ts';
export { weightsSheetSchema, type TypedFacts, type WeightsSheet } from './weights-sheet-schema.ts';
export { fileDocument, type FileDocument } from './file-document.ts';
