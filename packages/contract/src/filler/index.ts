export { fillerSchema } from './filler-schema.ts';
export { parseFiller } from './parse-filler.ts';
