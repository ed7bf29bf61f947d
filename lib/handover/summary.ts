export { usualAftercare } from './summary/aftercare';
export type { SummaryContent, SummarySection } from './summary/content';
export { type StillMoment, stillMoments } from './summary/stills';
export { chosenStills, summaryOf } from './summary/summary-of';
