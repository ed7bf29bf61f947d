import type { HeardProposal, NarrationContext, NarrationLine } from '@/shared/narration';
import { findNames, findPrivate } from './private';
import { findCameraStops } from './rules/camera-stops';
import { findCoilPairs } from './rules/coil-pairs';
import { findJoints } from './rules/joints';
import { findMarkers } from './rules/markers';
import { type Draft, finishDraft } from './rules/proposal';
import { findReadings } from './rules/readings';
import { findRoles } from './rules/roles';
import { setScene } from './rules/scene';
import { listen } from './rules/talk';
import { findWork } from './work/find-work';

/** A name within a sentence hides no chapter; an address or a number does. */
const isNoName = (draft: Draft): boolean => draft.type === 'private' && draft.payload.reason !== 'name';

/**
 * What could go on the record from a narration: pure, the same for the same words. Spans are in the clock of
 * the lines; keys stay the same when the same lines are read again.
 */
export function propose(lines: readonly NarrationLine[], context: NarrationContext): HeardProposal[] {
  const talk = listen(lines, context);
  const scene = setScene(talk);
  const readings = findReadings(scene);
  const drafts: Draft[] = readings.map(({ from, to, payload, confidence, about }) => ({
    type: 'reading',
    from,
    to,
    payload,
    confidence,
    about,
  }));
  const names = findNames(talk);
  const work = findWork(talk, names);
  const secrets = findPrivate(talk, names);
  const stops = findCameraStops(talk);
  const all = [
    ...drafts,
    ...work,
    ...findMarkers(talk, readings, [...work, ...secrets.filter(isNoName), ...stops]),
    ...findCoilPairs(scene),
    ...findRoles(scene),
    ...findJoints(scene),
    ...secrets,
    ...stops,
  ];
  return all.map((draft) => finishDraft(talk, draft)).sort((a, b) => a.startMs - b.startMs);
}
