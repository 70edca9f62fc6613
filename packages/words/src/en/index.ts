export { domainErrorSentence, faultSentence } from './catalogue.ts';
