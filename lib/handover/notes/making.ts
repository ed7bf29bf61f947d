import { oneLine, shortTime } from '@/lib/film';
import type { FilmMoment } from '@/shared/moments';
import type { NoteDrawing } from '@/shared/notes';
import type { HandoverFacts } from '../facts';
import { publicAlias, publicWordsFor } from '../public-words';
import { publishedTimeOf } from '../published';
import { type Block, type Inline, words } from './blocks';
import { withoutPrices } from './prices';

export interface NoteOptions {
  /** Where the video will be seen; null while it is nowhere. See `videoAddressSchema`. */
  readonly videoAddress: string | null;
}

/** What every section is made with. */
export interface Making {
  readonly facts: HandoverFacts;
  /** How the client is called, at first ("a drummer") and from then on ("the drummer"); null for a job without one. */
  readonly alias: { readonly first: string; readonly again: string } | null;
  /** Words of the record on one line, without what is private and without prices. */
  say(text: string): string;
  /** The time of a moment in the published film, as a link where the video has an address; null where it is not shown. */
  time(moment: { takeId: FilmMoment['takeId'] | null; ms: number | null } | null): Inline | null;
  /** The same for a time of the published clock. */
  timeAt(publishedMs: number): Inline;
}

/** What a section has to say; null for nothing. */
export interface SectionDraft {
  blocks: Block[];
  drawings?: NoteDrawing[];
}
export type SectionMaker = (making: Making) => SectionDraft | null;

export function makingOf(facts: HandoverFacts, { videoAddress }: NoteOptions): Making {
  const { client, instrument } = facts.record;
  const first = publicAlias(facts.record);
  const again = first.replace(/^an?\s+/i, 'the ');
  const clear = publicWordsFor({ client: client && { ...client, alias: again }, instrument });
  const timeAt = (ms: number) => timeLink(ms, videoAddress);
  return {
    facts,
    alias: client && { first, again },
    say: (text) => clear(withoutPrices(oneLine(text))),
    timeAt,
    time: (moment) => {
      if (moment === null || moment.takeId === null || moment.ms === null) return null;
      const shown = publishedTimeOf(facts.published, { takeId: moment.takeId, ms: moment.ms });
      return shown.what === 'kept' ? timeAt(shown.ms) : null;
    },
  };
}

/** Whole seconds, as the text of the link tells them. */
function timeLink(ms: number, address: string | null): Inline {
  const text = words(shortTime(ms));
  if (address === null) return text;
  return { type: 'link', url: addressAt(address, Math.floor(ms / 1000)), children: [text] };
}

/** W3C Media Fragments URI 1.0, section 4.2.1: `#t=245` begins at 245 seconds. */
function addressAt(address: string, seconds: number): string {
  if (address.includes('{seconds}')) return address.replaceAll('{seconds}', String(seconds));
  return `${address.replace(/#.*$/, '')}#t=${seconds}`;
}
