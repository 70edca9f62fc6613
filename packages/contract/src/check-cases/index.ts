export { checkCaseFileSchema, checkCaseSchema } from './check-case-schema.ts';
export { parseCheckCases, type ParsedCheckCases } from './parse-check-cases.ts';
