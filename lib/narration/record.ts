import type { HeardProposal } from '@/shared/narration';
import { DomainError } from '@/shared/problem';
import { type NewReading, newReadingSchema } from '@/shared/readings';

/** A proposal that lacks something of what it would record. */
export class NeedsChangeError extends DomainError {
  constructor(missing: string) {
    super('invalid', 'It needs a change before it can be accepted.', missing);
  }
}

type Heard<T extends HeardProposal['type']> = Extract<HeardProposal, { type: T }>;

/**
 * The reading that an accepted proposal records.
 * @throws NeedsChangeError where the words do not say enough
 */
export function readingHeard({ payload, about }: Heard<'reading'>): Omit<NewReading, 'takeId' | 'ms'> {
  const { kind, digits, value, open, unit, between, subject } = payload;
  if (kind === 'polarity-kick') return kickHeard(payload, about);
  const said = digits ?? (value === null ? null : String(value));
  const wanted = {
    kind,
    ...(open ? { open: true } : said === null ? {} : { value: said }),
    unit,
    subject: subject || (about ?? ''),
    between,
    basis: 'measured',
  };
  const reading = newReadingSchema.safeParse(wanted);
  if (reading.success) return reading.data;
  throw new NeedsChangeError(
    `“${reading.error.issues[0]?.path.join('.') ?? 'value'}”: ${reading.error.issues[0]?.message ?? ''}`,
  );
}

/** Which row, and whether the steel was laid on or taken off, is rarely said in one breath with the kick. */
function kickHeard(
  { between, subject, sign }: Heard<'reading'>['payload'],
  about: string | null,
): Omit<NewReading, 'takeId' | 'ms'> {
  const row = /\b(slug|screw|upper|lower)\b/i.exec(subject)?.[1]?.toLowerCase();
  if (!between || !sign || !row) {
    throw new NeedsChangeError(
      'Say which conductors the red and the black lead were on, which row the steel was laid on, and which way the needle went.',
    );
  }
  return {
    kind: 'polarity-kick',
    subject: about ?? subject,
    basis: 'measured',
    details: {
      leads: { red: between[0], black: between[1] },
      steel: 'laid on',
      row,
      sign: sign === 'positive' ? 1 : -1,
    },
  };
}

/** What an accepted proposal says in one line, for the sheet and the margin. */
export function sayHeard(heard: HeardProposal): string {
  switch (heard.type) {
    case 'marker':
      return heard.payload.title;
    case 'reading':
      return sayReadingHeard(heard);
    case 'coil-pair':
      return `${heard.payload.conductors.join(' and ')} are one coil${heard.payload.row ? `, ${heard.payload.row} row` : ''}`;
    case 'role':
      return `${heard.payload.conductor} is ${heard.payload.role}`;
    case 'joint':
      return `${heard.payload.conductors.join(' + ')} joined`;
    case 'work':
      return `${heard.payload.description}: ${heard.payload.origin}, ${heard.payload.outcome}${heard.payload.charge === 'free' ? ', free' : ''}`;
    case 'private':
      return `${heard.payload.reason}: kept out of the public cut`;
    case 'camera-stop':
      return 'the camera stops or moves here';
  }
}

function sayReadingHeard({ payload, about }: Heard<'reading'>): string {
  const { kind, digits, value, open, unit, between, subject, sign } = payload;
  const what = [subject || about, between?.join(' – ')].filter(Boolean).join(', ');
  const said = open ? 'open' : sign ? `${sign} kick` : `${digits ?? value} ${unit}`;
  return `${what || kind}: ${said}`;
}
