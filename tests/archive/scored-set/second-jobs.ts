import { withTalk } from './form';
import { secondAcousticJobs } from './second-jobs-acoustic';
import { secondAmplifierJobs } from './second-jobs-amplifiers';
import { secondBassAndPickupJobs } from './second-jobs-bass-pickups';
import { secondElectricJobs } from './second-jobs-electric';
import { secondOtherJobs } from './second-jobs-other';
import { secondTalk } from './second-jobs-talk';

/** A second blind set, written apart from the first. Not to be read by who writes rules. */
export const secondJobs = withTalk(
  [
    ...secondElectricJobs,
    ...secondBassAndPickupJobs,
    ...secondAcousticJobs,
    ...secondAmplifierJobs,
    ...secondOtherJobs,
  ],
  secondTalk,
);
