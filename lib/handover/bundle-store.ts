export { bringInBundle, type SentBundle } from './bundle/bundle-in-store';
export { type MoreDocuments, writeBundle } from './bundle/bundle-out-store';
