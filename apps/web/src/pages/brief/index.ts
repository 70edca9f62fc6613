export { BriefPage } from './brief-page.tsx';
