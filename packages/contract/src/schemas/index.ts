export { documentSchemas } from './document-schemas.ts';
