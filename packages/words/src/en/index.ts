export { domainErrorSentence, faultSentence } from './catalogue.ts';
export { COMMAND_LINE, USAGE } from './commands.ts';
export { METHOD_WORDS, REPORT_WORDS, VERDICT_WORDS } from './register.ts';
