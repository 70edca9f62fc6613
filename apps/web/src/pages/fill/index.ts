export { FillPage } from './fill-page.tsx';
