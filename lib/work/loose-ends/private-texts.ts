import { type PrivateWords, privateWordsFor } from '@/lib/narration';
import type { LooseEnd, TyingPlace } from '@/shared/loose-ends';
import type { LooseEndFacts } from './facts';
import { quoted, sayList } from './say';

const reasonsInWords: Record<PrivateWords['reason'], string> = {
  name: 'a name',
  phone: 'a telephone number',
  email: 'an e-mail address',
  address: 'a street or a place',
  serial: 'the serial number',
};

interface PublicText {
  readonly id: string;
  readonly text: string;
  /** How the text is named; private words in it are not said again. */
  readonly say: (shown: string) => string;
  readonly since: number;
  readonly place: TyingPlace;
}

/** Texts that go out with the film and hold what should stay in the workshop. */
export function privateTextEnds(facts: LooseEndFacts): LooseEnd[] {
  const privateWordsIn = privateWordsFor({
    clientName: facts.client?.name ?? null,
    reach: facts.client?.reach ?? null,
    serial: facts.instrument.serial,
  });
  return publicTexts(facts).flatMap(({ id, text, say, since, place }): LooseEnd[] => {
    const found = privateWordsIn(text);
    if (found.length === 0) return [];
    const reasons = [...new Set(found.map(({ reason }) => reasonsInWords[reason]))];
    return [
      {
        id: `private words:${id}`,
        kind: 'private words',
        sentence: `${say(quoted(without(text, found)))} holds ${sayList(reasons)}.`,
        since,
        place,
      },
    ];
  });
}

function publicTexts({ job, client, markers }: LooseEndFacts): PublicText[] {
  const title: PublicText = {
    id: 'title',
    text: job.title,
    say: () => 'The title of the job, which heads the public chapters,',
    since: job.createdAt,
    place: { on: 'ticket', anchor: 'title' },
  };
  const alias = client && {
    id: 'alias',
    text: client.alias,
    say: () => 'The alias of the client, which public texts use,',
    since: job.createdAt,
    place: { on: 'ticket' as const, anchor: 'alias' },
  };
  const shown = markers.filter((marker) => marker.public);
  return [
    title,
    ...(alias ? [alias] : []),
    ...shown.map(
      (marker): PublicText => ({
        id: marker.id,
        text: marker.title,
        say: (words) => `The public marker ${words}`,
        since: marker.createdAt,
        place: { on: 'sheet', line: marker.id },
      }),
    ),
  ];
}

/** The text with an ellipsis where the private words stand. */
function without(text: string, found: readonly PrivateWords[]): string {
  return found.reduceRight((shown, { from, to }) => `${shown.slice(0, from)}…${shown.slice(to)}`, text);
}
