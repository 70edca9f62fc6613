export { BriefPage } from './brief-page.tsx';
export { FilePage } from './files/file-page.tsx';
