import { KICK_SCENE, KICKS, type KickEntry } from '../lexicon/kicks';
import { PhraseBook, phraseBook } from '../words/phrases';
import { Marks } from './marks';
import { emptyReading, type ReadingCandidate } from './reading-candidate';
import { pairBefore, type Scene } from './scene';
import { gapMs, wordAt } from './talk';

const KICK_BOOK = new PhraseBook<KickEntry>(KICKS);
const SCENE_BOOK = phraseBook(KICK_SCENE);
/** Talk of touching the poles sets the scene for this long. */
const SCENE_LASTS_MS = 25_000;
const PAIR_LASTS_MS = 40_000;
const SAME_KICK_MS = 4000;

/** Which way the needle went when the poles were touched: kind `polarity-kick`, with its sign. */
export function kickReadings(scene: Scene): ReadingCandidate[] {
  const found: ReadingCandidate[] = [];
  const scenes = new Marks(scene.talk, SCENE_BOOK);
  for (const kick of new Marks(scene.talk, KICK_BOOK).index.list) {
    const setting = scenes.index.lastFrom(kick.from);
    const set = setting && gapMs(scene.talk, setting.from, kick.from) <= SCENE_LASTS_MS;
    if (!set || scene.noReading.expected(kick.from) || namesConductor(scene, kick)) continue;
    const last = found.at(-1);
    const repeat =
      last &&
      last.payload.sign === kick.entry.sign &&
      gapMs(scene.talk, last.to - 1, kick.from) <= SAME_KICK_MS;
    if (!repeat) found.push(kickReading(scene, kick, last?.to ?? 0));
  }
  return found;
}

/** "it makes green positive" is a role, no kick. */
const namesConductor = (scene: Scene, span: { from: number; to: number }): boolean =>
  scene.conductors.some(
    (conductor) => conductor.wire && conductor.from >= span.from - 1 && conductor.to <= span.to,
  ) || wordAt(scene.talk, span.from - 1) === 'not';

function kickReading(
  scene: Scene,
  kick: { from: number; to: number; entry: KickEntry },
  notBefore: number,
): ReadingCandidate {
  const pair = pairBefore(scene, kick.from, 0, PAIR_LASTS_MS);
  const row =
    scene.subjects.ahead(kick.from, notBefore, ['row']) ??
    scene.subjects.behind(kick.to, kick.to + 8, ['row']);
  const pickup = scene.subjects.pickup(kick.from)?.name ?? null;
  return {
    from: kick.from,
    to: kick.to,
    confidence: row && pair ? 0.9 : 0.7,
    ownSubject: row !== null,
    about: pickup,
    payload: {
      ...emptyReading,
      kind: 'polarity-kick',
      unit: 'kick',
      sign: kick.entry.sign,
      between: pair ? [pair.names[0], pair.names[1]] : null,
      subject: [pickup, row?.name].filter((part) => part !== null && part !== undefined).join(', '),
    },
  };
}
