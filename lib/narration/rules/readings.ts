import { kickReadings } from './kick-readings';
import { measuredReadings } from './measured-readings';
import { openReadings } from './open-readings';
import type { ReadingCandidate } from './reading-candidate';
import type { Scene } from './scene';
import { settleReadings } from './settle-readings';

/** Every reading heard in the talk, each once. */
export function findReadings(scene: Scene): ReadingCandidate[] {
  const values = measuredReadings(scene);
  return settleReadings(scene.talk, [...values, ...openReadings(scene, values), ...kickReadings(scene)]);
}
