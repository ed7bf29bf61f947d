/** Dialogs of the job's page; one is open at a time. */
export type OpenSheet = 'takes' | 'picker' | 'wiring' | 'narration' | 'chapters' | 'keys';
