import type { Ticket } from '@/shared/jobs';

/** What a job is chosen by. */
export type ChosenJob = Pick<Ticket, 'id' | 'number' | 'title'>;

/** As many as a thumb scrolls through; others are found by their words. */
export const jobsAtOnce = 20;
