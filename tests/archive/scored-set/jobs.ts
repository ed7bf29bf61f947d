import { type ScoredJob, withTalk } from './form';
import { acousticJobs } from './jobs-acoustic';
import { amplifierJobs } from './jobs-amplifiers';
import { bassJobs } from './jobs-bass';
import { bowedJobs } from './jobs-bowed';
import { electricGuitarJobs } from './jobs-electric-guitar';
import { otherJobs } from './jobs-other';
import { pedalAndPickupJobs } from './jobs-pedals-pickups';
import { smallJobs } from './jobs-small';
import { acousticTalk } from './talk-acoustic';
import { electronicsTalk } from './talk-electronics';
import { guitarTalk } from './talk-guitars';
import { longTalk } from './talk-long';

const jobs = [
  ...electricGuitarJobs,
  ...bassJobs,
  ...acousticJobs,
  ...smallJobs,
  ...bowedJobs,
  ...amplifierJobs,
  ...pedalAndPickupJobs,
  ...otherJobs,
];

/** All jobs of the scored set, with all that is said in them. */
export const scoredJobs: ScoredJob[] = withTalk(
  withTalk(jobs, { ...guitarTalk, ...acousticTalk, ...electronicsTalk }),
  longTalk,
);
