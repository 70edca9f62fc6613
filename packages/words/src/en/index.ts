export { documentFaultSentence, documentNoticeSentence, formatFaults } from './brief.ts';
export { domainErrorSentence, faultSentence } from './catalogue.ts';
export { COMMAND_LINE, USAGE } from './commands.ts';
export { METHOD_WORDS, REPORT_WORDS, VERDICT_WORDS } from './register.ts';
export {
  adjusterName,
  BASIS_WORDS,
  CRITERION_WORDS,
  DESIGN_WORDS,
  DOSING_METHOD_NAMES,
  HALVED_BY_WORDS,
  PARAMETER_NAMES,
  TARGET_WORDS,
  TEST_WORDS,
} from './design.ts';
export { CONSEQUENCE_WORDS, findingSentence } from './findings.ts';
export { auditSentence, STORE_WORDS, storeSentence, type AuditFindingCode, type StoreTrouble } from './store.ts';
export { SAVE_WORDS, SERVE_WORDS, SERVER_PROBLEMS } from './server.ts';
export { SHELL_WORDS, THREAD_WORDS } from './shell.ts';
export { COMPUTING_WORDS, KEEPING_WORDS, type KeptThing, type ProductThing } from './keeping.ts';
export { FIELD_WORDS } from './fields.ts';
export { FILE_WORDS } from './files.ts';
export { FILL_WORDS } from './fill.ts';
export { ARITHMETIC_WORDS, BRIEF_PAGE_WORDS } from './brief-page.ts';
export { BRIEF_TEMPLATE } from './brief-template.ts';
export { START_WORDS } from './start.ts';
export { CAUSE_WORDS, OPEN_NUMBER_WORDS } from './open-number.ts';
export { SHEET_WORDS } from './sheet.ts';
export { ACCEPT_WORDS } from './accept.ts';
export {
  conclusionSentence,
  LIMIT_REASON_WORDS,
  PURPOSE_WORDS,
  STRUCK_WORDS,
  TEST_NUMBER_WORDS,
  TEST_REASON_WORDS,
  testArithmetic,
  WEIGHT_TEST_NAMES,
  weightsFaultSentence,
  weightsNoteSentence,
} from './weights.ts';
export { exampleWeights } from './example-weights.ts';
export { WEIGHTS_PAGE_WORDS } from './weights-page.ts';
export { WEIGHTS_VERDICT_WORDS } from './weights-verdicts.ts';
