export { SheetPage } from './sheet-page.tsx';
