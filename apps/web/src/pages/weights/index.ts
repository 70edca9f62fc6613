export { FreeWeightsPage, ProductWeightsPage } from './weights-page.tsx';
