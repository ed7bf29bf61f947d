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
  readonly markers: readonly Pick<Marker, 'id' | 'title' | 'public'>[];
  /** Sections of the episode notes that were written by hand, with what is private in each. */
  readonly notes: readonly {
    id: NoteSectionId;
    heading: string;
    text: string;
    found: readonly Pick<PrivateWords, 'words' | 'reason'>[];
  }[];
  /** What was heard; those of type `private` count. */
  readonly proposals: readonly Proposal[];
  readonly published: PublishedFilm;
  /** Ids of findings that may go public. */
  readonly allowed: readonly string[];
}

interface PublicText {
  id: string;
  text: string;
  found: readonly Pick<PrivateWords, 'words' | 'reason'>[];
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
  const allowed = new Set(facts.allowed);
  return textsOf(facts).flatMap(({ id: place, text, found, where, documents, place: tied }) => {
    if (found.length === 0) return [];
    const words = [...new Set(found.map((each) => each.words))].join(', ');
    // Other words are another finding: what was allowed was allowed as it stood.
    const id = `${place}:${hashOf(text)}`;
    return [
      {
        id,
        what: 'written' as const,
        words,
        sentence: `${where} holds ${sayReasons(found)}: ${words}.`,
        documents: [...documents],
        place: tied,
        decision: allowed.has(id) ? ('allowed' as const) : ('open' as const),
      },
    ];
  });
}

const everywhere: readonly PublicDocument[] = ['chapters', 'notes', 'cut'];

function textsOf({ known, title, markers, notes }: FindingFacts): PublicText[] {
  const look = privateWordsFor(known);
  return [
    {
      id: 'title',
      text: title,
      found: look(title),
      where: 'The title of the job',
      documents: everywhere,
      place: { on: 'ticket', anchor: 'title' },
    },
    ...markers.filter((marker) => marker.public).map((marker) => chapterText(marker, look)),
    ...notes.map(({ id, heading, text, found }) => ({
      id: `notes:${id}`,
      text,
      found,
      where: `The section “${heading}” of the notes`,
      documents: ['notes'] as const,
      place: { on: 'hand-over' as const, anchor: `notes-${id.replaceAll(' ', '-')}` },
    })),
  ];
}

function chapterText(
  { id, title }: { id: MarkerId; title: string },
  look: (text: string) => PrivateWords[],
): PublicText {
  return {
    id: `chapter:${id}`,
    text: title,
    found: look(title),
    where: `The chapter “${title}”`,
    documents: everywhere,
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

function sayReasons(found: readonly Pick<PrivateWords, 'reason'>[]): string {
  return [...new Set(found.map(({ reason }) => reasons[reason]))].join(' and ');
}

/** FNV-1a, 32 bits: tells one text from another, no more. */
function hashOf(text: string): string {
  let hash = 0x811c9dc5;
  for (let at = 0; at < text.length; at++) hash = Math.imul(hash ^ text.charCodeAt(at), 0x01000193);
  return (hash >>> 0).toString(36);
}
