import { withTalk } from './form';
import { thirdAcousticJobs } from './third-jobs-acoustic';
import { thirdBassAndPickupJobs } from './third-jobs-bass-pickups';
import { thirdElectricJobs } from './third-jobs-electric';
import { thirdOtherJobs } from './third-jobs-other';
import { thirdTalk } from './third-jobs-talk';

/** A third blind set, written apart from the first two. Not to be read by who writes rules. */
export const thirdJobs = withTalk(
  [...thirdElectricJobs, ...thirdBassAndPickupJobs, ...thirdAcousticJobs, ...thirdOtherJobs],
  thirdTalk,
);
