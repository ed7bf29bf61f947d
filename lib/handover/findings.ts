import { type PrivateWords, privateWordsFor } from '@/lib/narration';
import type { Finding, PublicDocument } from '@/shared/cut';
import type { MarkerId } from '@/shared/ids';
import type { TyingPlace } from '@/shared/loose-ends';
import type { Marker } from '@/shared/markers';
import type { Proposal } from '@/shared/narration-record';
import type { NoteSectionId } from '@/shared/notes';
import type { PublishedFilm } from './published';

/** The texts and words in which something private could go public. */
export interface FindingFacts {
  readonly known: { clientName: string | null; reach: string | null; serial: string | null };
  readonly title: string;
  readonly alias: string | null;
  readonly markers: readonly Pick<Marker, 'id' | 'title' | 'public'>[];
  /** Sections of the episode notes that were written by hand. */
  readonly notes: readonly { id: NoteSectionId; heading: string; text: string }[];
  /** What was heard; those of type `private` count. */
  readonly proposals: readonly Proposal[];
  readonly published: PublishedFilm;
  /** Ids of findings that may go public. */
  readonly allowed: readonly string[];
}

interface PublicText {
  id: string;
  text: string;
  /** "the chapter “…”": where the words stand. */
  where: string;
  documents: readonly PublicDocument[];
  place: TyingPlace;
}

/** All that is private and would go public, decided or not: what is written first, then what is spoken, in film order. */
export function findingsIn(facts: FindingFacts): Finding[] {
  return [...writtenIn(facts), ...spokenIn(facts)];
}

function writtenIn(facts: FindingFacts): Finding[] {
  const look = privateWordsFor(facts.known);
  const allowed = new Set(facts.allowed);
  return textsOf(facts).flatMap((text) => {
    const found = look(text.text);
    if (found.length === 0) return [];
    const words = [...new Set(found.map((each) => each.words))].join(', ');
    // Other words are another finding: what was allowed was allowed as it stood.
    const id = `${text.id}:${hashOf(text.text)}`;
    return [
      {
        id,
        what: 'written' as const,
        words,
        sentence: `${text.where} holds ${sayReasons(found)}: ${words}.`,
        documents: [...text.documents],
        place: text.place,
        decision: allowed.has(id) ? ('allowed' as const) : ('open' as const),
      },
    ];
  });
}

function textsOf({ title, alias, markers, notes }: FindingFacts): PublicText[] {
  const everywhere: PublicDocument[] = ['chapters', 'notes', 'cut'];
  return [
    {
      id: 'title',
      text: title,
      where: 'The title of the job',
      documents: everywhere,
      place: { on: 'ticket', anchor: 'title' },
    },
    ...(alias === null
      ? []
      : [
          {
            id: 'alias',
            text: alias,
            where: 'What the client is called in public',
            documents: ['notes'] as const,
            place: { on: 'ticket' as const, anchor: 'alias' },
          },
        ]),
    ...markers.filter((marker) => marker.public).map((marker) => chapterText(marker, everywhere)),
    ...notes.map(({ id, heading, text }) => ({
      id: `notes:${id}`,
      text,
      where: `The section “${heading}” of the notes`,
      documents: ['notes'] as const,
      place: { on: 'hand-over' as const, anchor: `notes-${id.replaceAll(' ', '-')}` },
    })),
  ];
}

function chapterText(
  { id, title }: { id: MarkerId; title: string },
  documents: readonly PublicDocument[],
): PublicText {
  return {
    id: `chapter:${id}`,
    text: title,
    where: `The chapter “${title}”`,
    documents,
    place: { on: 'sheet', line: id },
  };
}

/** What is cut away anyway need not be decided. */
function spokenIn({ proposals, published }: FindingFacts): Finding[] {
  const isKept = ({ takeId, startMs, endMs }: Proposal) =>
    published.pieces.some(
      (piece) =>
        piece.takeId === takeId && piece.fromMs < Math.max(endMs, startMs + 1) && piece.toMs > startMs,
    );
  return proposals
    .filter((proposal) => proposal.heard.type === 'private' && isKept(proposal))
    .map((proposal) => ({
      id: `spoken:${proposal.id}`,
      what: 'spoken',
      words: proposal.heard.words,
      sentence: `Said on film: “${proposal.heard.words}”.`,
      documents: ['cut'],
      place: { on: 'film', moment: { takeId: proposal.takeId, ms: proposal.startMs } },
      decision: decisions[proposal.decision],
    }));
}

const decisions = { open: 'open', accepted: 'held back', dismissed: 'allowed' } as const;

const reasons: Record<PrivateWords['reason'], string> = {
  name: 'a name',
  phone: 'a telephone number',
  email: 'an e-mail address',
  address: 'an address',
  serial: 'a serial number',
};

function sayReasons(found: readonly PrivateWords[]): string {
  return [...new Set(found.map(({ reason }) => reasons[reason]))].join(' and ');
}

/** FNV-1a, 32 bits: tells one text from another, no more. */
function hashOf(text: string): string {
  let hash = 0x811c9dc5;
  for (let at = 0; at < text.length; at++) hash = Math.imul(hash ^ text.charCodeAt(at), 0x01000193);
  return (hash >>> 0).toString(36);
}
