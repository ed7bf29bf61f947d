import { clientFinder } from './private-words/client';
import { fold } from './private-words/folded';
import { findHeard } from './private-words/heard';
import { EMAIL, reachFinder } from './private-words/reach';
import { serialFinder } from './private-words/serial';
import { everySpan, type Finder, type PrivateSpan, settle } from './private-words/spans';

/** What is known of the client and the instrument, as it is written on the ticket. */
export interface KnownOfClient {
  readonly clientName: string | null;
  /** How to reach the client, in lines. */
  readonly reach: string | null;
  readonly serial: string | null;
}

/** Words that no public text may hold: characters `from` up to, not including, `to` (UTF-16 units). */
export interface PrivateWords extends PrivateSpan {
  readonly words: string;
}

/**
 * The private words of a text that is to be public, in order, none on another: names, telephone numbers, e-mail and
 * street addresses, and the full serial number. It finds what the ticket knows, and by the rules for talk what it
 * does not know.
 */
export function privateWordsIn(text: string, known: KnownOfClient): PrivateWords[] {
  return privateWordsFor(known)(text);
}

/** The same for many texts of one job: what is known is made ready once. */
export function privateWordsFor({
  clientName,
  reach,
  serial,
}: KnownOfClient): (text: string) => PrivateWords[] {
  const finders = [serialFinder(serial), reachFinder(reach), emailFinder];
  const findClient = clientFinder(clientName);
  return (text) => {
    const folded = fold(text);
    const spans = [
      ...finders.flatMap((find) => find(folded)),
      ...findClient(text, folded),
      ...findHeard(text, clientName),
    ];
    return settle(text, spans).map((span) => ({ ...span, words: text.slice(span.from, span.to) }));
  };
}

const emailFinder: Finder = (text) => everySpan(text, EMAIL, 'email');
