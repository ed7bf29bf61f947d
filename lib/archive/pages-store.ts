export { previewGiveOut } from './pages/preview-store';
export { builtSearchScript, type PageSet, pagesOf } from './pages/set-store';
export { publicJsonOf, tableOf, wholeJsonOf } from './pages/tables-store';
