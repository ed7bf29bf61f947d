import type { Instrument } from '@/shared/jobs';
import type { WorkItem } from '@/shared/work';
import { paragraph, told, words } from './blocks';
import type { Making, SectionMaker } from './making';
import { onFilm } from './on-film';
import { capital, sayList, sentence, withTime } from './say';

export const cameIn: SectionMaker = (making) => {
  const { alias, facts } = making;
  const { work } = facts.record;
  const asked = work.filter(({ origin }) => origin === 'asked').map((item) => wanted(making, item));
  const offered = work.filter(({ origin }) => origin === 'offered').map((item) => wanted(making, item));
  return {
    blocks: [
      paragraph(words(arrival(making))),
      ...told(alias === null ? 'I was asked for this:' : `${capital(alias.again)} asked for this:`, asked),
      ...told(asked.length === 0 ? 'I offered this:' : 'On top of that I offered this:', offered),
      ...told('This was said when it came in:', onFilm(making, 'intake', 'with a note')),
    ],
  };
};

function arrival({ alias, facts, say }: Making): string {
  const { instrument, job } = facts.record;
  const what = kindOfInstrument(instrument);
  const name = [instrument.maker, instrument.model].filter(Boolean).join(' ');
  const whole = name === '' ? what : `${what}, ${name}`;
  const features = (instrument.features ?? '')
    .split('\n')
    .map((line) => line.trim())
    .filter(Boolean);
  // The alias is public by choice: it is not looked through with the rest.
  return [
    sentence(alias === null ? `${say(whole)} came in` : `${alias.first} brought me ${say(whole)}`),
    ...(features.length === 0 ? [] : [sentence(`This is how to know it: ${say(sayList(features))}`)]),
    ...(job.cameWith.length === 0 ? [] : [sentence(`With it came: ${say(sayList(job.cameWith))}`)]),
  ].join(' ');
}

const unlike: Readonly<Record<string, string>> = {
  'violin family': 'an instrument of the violin family',
  other: 'an instrument',
};

function kindOfInstrument({ type }: Instrument): string {
  return unlike[type] ?? `${/^(?!uk|uni|eu)[aeiou]/i.test(type) ? 'an' : 'a'} ${type}`;
}

function wanted({ say, time }: Making, { what, begun }: WorkItem) {
  return withTime(capital(say(what)), time(begun));
}
