import { parseText } from 'media-captions';
import { propose, readCaptions, writeWebVtt } from '@/lib/narration';
import type { NarrationLine } from '@/shared/narration';
import { best, type Row } from './table';

const lineCount = 6000;
/** A line starts every so often: three hours in all. */
const lineMs = 1800;

/** Invented talk, over and over with other numbers: some of it proposes, most of it does not. */
const talk = [
  'right so what have we got here',
  'the neck pickup reads seven point NINE k',
  'um that is about what you would expect',
  'so red to white is four point oh NINE k',
  'I will clean the pots for free while I am in there',
  'and then the black and the bare go together to ground',
  'let me just put the iron on',
  'low E at the twelfth one point NINE millimetres',
  'he said it crackles when he plays it loud',
  'okay that is the strings off',
];
const digits = ['zero', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine'];

/** Three hours of talk read and listened to, beside what an independent parser takes to read the same file. */
export async function narration(): Promise<Row[]> {
  const lines = Array.from({ length: lineCount }, (_, at): NarrationLine => {
    const text = (talk[at % talk.length] ?? '').replace('NINE', digits[at % 7] ?? '');
    return { startMs: at * lineMs, endMs: at * lineMs + 1700, text };
  });
  const file = writeWebVtt(lines);
  const bytes = new TextEncoder().encode(file);
  const context = { instrumentType: 'electric guitar', clientName: 'Wilma Featherstone', slang: [] };
  const { ours, reference } = await best(
    5,
    () => propose(readCaptions(bytes).lines, context),
    () => parseText(file, { type: 'vtt' }),
  );
  return [
    {
      name: `three hours of narration, ${lineCount} lines`,
      ours,
      reference,
      referenceName: 'media-captions reading the file',
      unit: 'ms',
      target: 'under 1000 ms',
    },
  ];
}
