import fc, { type GeneratorValue } from 'fast-check';
import { ZipFile } from 'yazl';
import { proposalKeyOf } from '@/lib/narration/store';
import { type BundleRecord, bundleRecordSchema } from '@/shared/bundle';
import { takeIdSchema } from '@/shared/ids';
import { jobStates } from '@/shared/jobs';
import { markerKinds } from '@/shared/markers';
import { heardProposalSchema } from '@/shared/narration';
import { bases } from '@/shared/readings';
import { charges, deeds, oldPartFates, origins, partSources, workOutcomes } from '@/shared/work';
import { fourPots } from '../wiring/jack-harnesses';
import { awkwardTitles } from './awkward';

/** Writes a ZIP of these files with yazl. */
export async function zipOf(files: Readonly<Record<string, string | Buffer>>): Promise<Buffer> {
  const zip = new ZipFile();
  for (const [name, content] of Object.entries(files)) zip.addBuffer(Buffer.from(content), name);
  zip.end();
  const pieces: Buffer[] = [];
  for await (const piece of zip.outputStream) pieces.push(Buffer.from(piece));
  return Buffer.concat(pieces);
}

const letters = [...'0123456789abcdefghjkmnpqrstvwxyz'];
const word = (most: number) =>
  fc
    .oneof(fc.constantFrom(...awkwardTitles), fc.string({ unit: 'grapheme', minLength: 1, maxLength: 40 }))
    .map(
      (text) =>
        [...text]
          .slice(0, most / 2)
          .join('')
          .trim() || 'Löt-Öse',
    );
const orNull = <T>(arbitrary: fc.Arbitrary<T>) => fc.option(arbitrary, { nil: null });
const stamp = fc.integer({ min: 1_500_000_000_000, max: 1_800_000_000_000 });
const reachMs = 600_000;
const ms = fc.integer({ min: 0, max: reachMs - 1000 });

/** A record in which every part is filled, as another program might have written it. */
export function recordFrom(g: GeneratorValue): BundleRecord {
  const maker = new Maker(g);
  const takes = maker.takes();
  const clients = [maker.client(), maker.client()];
  const instrument = { ...maker.instrument(), clientId: clients[1]?.id ?? null };
  const meters = [{ id: maker.id(), name: maker.words(60), ranges: [range], createdAt: g(() => stamp) }];
  const markers = maker.several(() => maker.marker());
  const readings = maker.several(() => maker.reading(meters[0]?.id ?? null));
  const traces = [maker.trace('neck'), maker.trace('bridge')];
  const work = maker.several(() => maker.workItem());
  return bundleRecordSchema.parse({
    format: 'benchtake job',
    version: 1,
    madeAt: '2026-11-25T10:00:00.000Z',
    job: maker.job(clients[0]?.id ?? null, instrument.id, [traces[0]?.id, markers[0]?.id]),
    clients,
    instrument,
    claims: maker.several(() => maker.claim(readings[0]?.id ?? null)),
    meters,
    takes,
    film: takes.map(({ id }) => id),
    markers,
    readings,
    traces,
    outcomes: traces.map(({ id, subject }) => maker.outcome(id, subject)),
    harness: { harness: fourPots, createdAt: g(() => stamp) },
    lines: maker.several(() => maker.line()),
    proposals: [...markers, ...work].map(({ id }) => maker.proposal(id)),
    work,
    parts: maker.several(() => maker.part()),
    handOver: maker.handOver(markers[0]?.id ?? ''),
  });
}

const probe = (sizeBytes: number) => ({
  ...{ container: 'mp4', sizeBytes, durationMs: reachMs, firstFrameMs: 40, video: null, audio: [] },
  recordedAt: { epochMs: 1_770_000_000_000, source: 'utc', offsetMinutes: null },
  ...{ hasPlaceTags: true, hasDeviceTags: false, playable: { ok: false, reason: 'No picture.' } },
});
/** Always the same for the same seed. */
export function oneRecord(seed: number): BundleRecord {
  let record: BundleRecord | null = null;
  fc.assert(
    fc.property(fc.gen(), (g) => {
      record = recordFrom(g);
    }),
    { numRuns: 1, seed },
  );
  if (!record) throw new Error('There is no such record.');
  return record;
}

const range = { unit: 'kΩ', fullScale: 20, resolution: 0.01, percent: 0.8, counts: 2 };

class Maker {
  private count = 0;
  private takeIds: string[] = [];
  constructor(private readonly g: GeneratorValue) {}

  id(): string {
    const random = this.g(fc.string, { unit: fc.constantFrom(...letters), minLength: 12, maxLength: 12 });
    return `${random}${String(this.count++).padStart(8, '0')}`;
  }
  one<T>(values: readonly T[]): T {
    return this.g(() => fc.constantFrom(...values));
  }
  words(most: number): string {
    return this.g(() => word(most));
  }
  wordsOrNone(most: number): string | null {
    return this.g(() => orNull(word(most)));
  }
  several<T>(make: () => T): T[] {
    return Array.from({ length: this.g(fc.integer, { min: 1, max: 4 }) }, make);
  }
  moment() {
    return { takeId: this.one(this.takeIds), ms: this.g(() => ms) };
  }
  momentOrNone() {
    return this.g(fc.boolean) ? this.moment() : null;
  }

  takes() {
    const count = this.g(fc.integer, { min: 1, max: 3 });
    return Array.from({ length: count }, (_, position) => {
      const id = this.id();
      this.takeIds.push(id);
      const sha256 = this.g(fc.string, {
        unit: fc.constantFrom(...'0123456789abcdef'),
        minLength: 64,
        maxLength: 64,
      });
      const sizeBytes = this.g(fc.integer, { min: 1, max: 2 ** 40 });
      return {
        ...{
          id,
          position,
          reachMs,
          createdAt: this.g(() => stamp),
          trimStartMs: this.g(() => ms),
          trimEndMs: null,
        },
        recording: {
          ...{
            name: `take ${position} ♪.mp4`,
            sizeBytes,
            modifiedAt: this.g(() => stamp),
            clockOffsetMinutes: 60,
          },
          ...{ fingerprint: { sizeBytes, sha256 }, probe: probe(sizeBytes), file: null },
        },
      };
    });
  }
  client() {
    const [name, alias] = [this.words(200), this.words(200)];
    const [reach, notes] = [this.wordsOrNone(200), this.wordsOrNone(200)];
    return { id: this.id(), name, alias, reach, notes, createdAt: this.g(() => stamp) };
  }
  instrument() {
    const [maker, model, serial] = [this.wordsOrNone(100), this.wordsOrNone(100), this.wordsOrNone(100)];
    const features = this.wordsOrNone(200);
    return {
      id: this.id(),
      type: 'bass guitar',
      maker,
      model,
      serial,
      features,
      createdAt: this.g(() => stamp),
    };
  }
  job(clientId: string | null, instrumentId: string, known: (string | undefined)[]) {
    return {
      id: this.id(),
      ...{
        number: this.g(fc.integer, { min: 1, max: 9999 }),
        title: this.words(200),
        clientId,
        instrumentId,
      },
      ...{
        state: this.one(jobStates),
        receivedOn: '2026-03-01',
        promisedOn: '2026-03-20',
        collectedOn: null,
      },
      ...{ place: this.wordsOrNone(100), cameWith: this.several(() => this.words(80)) },
      readyLook: {
        at: this.g(() => stamp),
        looseEnds: [
          {
            ...{ id: `failed check:${known[0]}`, kind: 'failed check', sentence: this.words(100), since: 1 },
            place: { on: 'trace', traceId: known[0] },
          },
          {
            ...{ id: `private words:${known[1]}`, kind: 'private words', sentence: 'One.', since: 2 },
            place: { on: 'sheet', line: known[1] },
          },
          {
            ...{ id: 'take without marker:many', kind: 'take without marker', sentence: 'Two.', since: 3 },
            place: { on: 'film', moment: this.moment() },
          },
        ],
      },
      createdAt: this.g(() => stamp),
    };
  }
  claim(readingId: string | null) {
    return {
      ...{
        id: this.id(),
        ofJob: this.g(fc.boolean),
        kind: 'year',
        subject: this.wordsOrNone(60),
        value: this.words(60),
      },
      ...{ basis: this.one(bases), evidence: this.wordsOrNone(200), moment: this.momentOrNone(), readingId },
      ...{ sure: 'likely', createdAt: this.g(() => stamp) },
    };
  }
  marker() {
    const moment = this.moment();
    return {
      ...{
        id: this.id(),
        ...moment,
        kind: this.one(markerKinds),
        title: this.words(200),
        note: this.wordsOrNone(200),
      },
      ...{
        endMs: this.g(fc.boolean) ? moment.ms + 500 : null,
        public: this.g(fc.boolean),
        createdAt: this.g(() => stamp),
      },
    };
  }
  reading(meterId: string | null) {
    const open = this.g(fc.boolean);
    return {
      ...{
        id: this.id(),
        takeId: null,
        ms: null,
        ...this.momentOrNone(),
        kind: 'resistance',
        open,
        unit: 'kΩ',
      },
      ...{ valueText: open ? null : '4.080', baseValue: open ? null : 4080, subject: this.words(60) },
      ...{ between: ['red', 'white'], basis: this.one(bases), meterId, details: { celsius: 21.5 } },
      ...{ note: this.wordsOrNone(200), createdAt: this.g(() => stamp) },
    };
  }
  trace(subject: string) {
    const assumed = [{ ends: ['red', 'white'], row: 'slug', positive: 'red', fromSubject: 'another' }];
    return {
      ...{
        id: this.id(),
        subject,
        conductors: ['red', 'white', 'green', 'black'],
        shield: true,
        frame: false,
      },
      ...{ rows: ['slug', 'screw'], assumed, planId: null, createdAt: this.g(() => stamp) },
    };
  }
  outcome(traceId: string, subject: string) {
    const moment = this.momentOrNone();
    const line = { role: 'hot', ends: ['red'], goesTo: this.words(60), inside: false, basis: 'stated' };
    return {
      ...{ id: this.id(), traceId, takeId: null, ms: null, ...moment, createdAt: this.g(() => stamp) },
      outcome: {
        ...{
          subject,
          plan: 'series',
          title: 'Both in series',
          lines: [line],
          hot: ['red'],
          ground: ['black'],
        },
        ...{ shield: 'ground', insulated: [], basis: 'stated', moment },
      },
    };
  }
  line() {
    const { takeId, ms: startMs } = this.moment();
    const [text, voice, heardText] = [this.words(400), this.wordsOrNone(60), this.wordsOrNone(200)];
    return { id: this.id(), takeId, startMs, endMs: startMs + 900, text, voice, heardText };
  }
  proposal(recordId: string) {
    const { takeId, ms: startMs } = this.moment();
    const span = { startMs, endMs: startMs + 700 };
    const heard = heardProposalSchema.parse({
      ...{ key: this.id(), ...span, words: this.words(60), confidence: 0.5, about: null, type: 'marker' },
      payload: { markerKind: 'work', title: this.words(100) },
    });
    const key = proposalKeyOf(takeIdSchema.parse(takeId), startMs, heard);
    return {
      id: this.id(),
      takeId,
      key,
      ...span,
      heard,
      decision: 'accepted',
      promisedAt: this.momentOrNone(),
      recordId,
    };
  }
  workItem() {
    return {
      ...{
        id: this.id(),
        what: this.words(300),
        origin: this.one(origins),
        charge: this.one([...charges, null]),
      },
      ...{ priceMinor: 4550, currency: 'EUR', outcome: this.one(workOutcomes), why: this.wordsOrNone(200) },
      ...{ begun: this.momentOrNone(), ended: this.momentOrNone(), createdAt: this.g(() => stamp) },
    };
  }
  part() {
    return {
      ...{
        id: this.id(),
        what: this.words(300),
        deed: this.one(deeds),
        source: this.one([...partSources, null]),
      },
      ...{
        fate: this.one([...oldPartFates, null]),
        doubt: this.wordsOrNone(100),
        doubtBasis: this.one(bases),
      },
      ...{ evidence: this.wordsOrNone(100), moment: this.momentOrNone(), createdAt: this.g(() => stamp) },
    };
  }
  handOver(markerId: string) {
    const { takeId, ms: fromMs } = this.moment();
    const span = { takeId, fromMs, toMs: fromMs + 400 };
    const section = { id: 'found', on: true, text: this.words(400), madeFrom: this.words(400) };
    return {
      cut: { cutAway: [span], muted: [span], covers: [{ ...span, x: 0, y: 0.5, width: 0.25, height: 0.5 }] },
      notes: { sections: [section], videoAddress: 'https://example.org/film?at={seconds}' },
      summary: { greeting: this.words(100), stills: [`marker:${markerId}`] },
      allowed: [`chapter:${markerId}:1abc`],
      createdAt: this.g(() => stamp),
    };
  }
}

/** A record with its ids in the order in which they come, and without what is of the machine and the day. */
export function comparable(record: BundleRecord): unknown {
  const { job, clients, instrument, proposals, ...rest } = record;
  const ids = new Map<string, string>();
  const text = JSON.stringify({
    ...{ ...rest, madeAt: null, clients, instrument, job: { ...job, number: null } },
    proposals: proposals.map((proposal) => ({
      ...proposal,
      key: proposal.key === proposalKeyOf(proposal.takeId, proposal.startMs, proposal.heard),
    })),
  });
  return JSON.parse(
    text.replace(/(?<![0-9a-z])[0-9a-z]{20}(?![0-9a-z])/g, (id) => {
      const name = ids.get(id) ?? `id ${ids.size}`;
      ids.set(id, name);
      return name;
    }),
  );
}
