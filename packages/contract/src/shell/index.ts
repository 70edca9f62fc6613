export { parseShell } from './parse-shell.ts';
export { shellSchema } from './shell-schema.ts';
