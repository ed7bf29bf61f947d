import { edit } from '@/db/changes';
import { newId } from '@/db/ids';
import type { Database } from '@/db/open';
import {
  clients,
  folders,
  instruments,
  jobs,
  keptTickets,
  markers,
  meters,
  recordings,
  settings,
  takes,
  tasks,
} from '@/db/schema';
import {
  claimIdSchema,
  clientIdSchema,
  folderIdSchema,
  harnessIdSchema,
  instrumentIdSchema,
  type JobId,
  jobIdSchema,
  markerIdSchema,
  meterIdSchema,
  narrationLineIdSchema,
  outcomeIdSchema,
  partIdSchema,
  proposalIdSchema,
  readingIdSchema,
  recordingIdSchema,
  takeIdSchema,
  taskIdSchema,
  traceIdSchema,
  workItemIdSchema,
} from '@/shared/ids';
import { harnessSchema } from '@/shared/jack';

/** Gives the next text to be written somewhere. */
export type NextText = () => string;

const none = { createdAt: 1 } as const;

/** A job with something written into every place that takes words. */
export function writeJob(db: Database, clientId: string | null, next: NextText, fileName = 'take.mp4') {
  const client = clientId === null ? null : clientIdSchema.parse(clientId);
  const jobId = newId(jobIdSchema);
  const instrumentId = newId(instrumentIdSchema);
  const folderId = newId(folderIdSchema);
  const recordingId = newId(recordingIdSchema);
  const takeId = newId(takeIdSchema);
  const traceId = newId(traceIdSchema);
  const moment = { takeId, ms: 10 };
  db.insert(instruments)
    .values({
      id: instrumentId,
      type: next(),
      maker: next(),
      model: next(),
      serial: next(),
      features: next(),
      clientId: client,
      ...none,
    })
    .run();
  const number = db.select().from(jobs).all().length + 1;
  db.insert(jobs)
    .values({
      id: jobId,
      number,
      title: next(),
      clientId: client,
      instrumentId,
      receivedOn: '2026-11-20',
      place: next(),
      cameWith: [next(), next()],
      readyLook: {
        at: 1,
        looseEnds: [
          {
            id: 'promise',
            kind: 'promise passed',
            sentence: next(),
            since: 1,
            place: { on: 'ticket', anchor: 'promisedOn' },
          },
        ],
      },
      ...none,
      updatedAt: 1,
    })
    .run();
  db.insert(folders)
    .values({ id: folderId, path: `/films/${folderId}`, ...none })
    .run();
  db.insert(recordings)
    .values({
      id: recordingId,
      folderId,
      path: fileName,
      sizeBytes: 1,
      modifiedAt: 1,
      state: 'failed',
      problem: next(),
      ...none,
    })
    .run();
  db.insert(takes)
    .values({ id: takeId, jobId, recordingId, ...none })
    .run();
  db.insert(tasks)
    .values({
      id: newId(taskIdSchema),
      kind: 'probe',
      recordingId,
      payload: { words: next() },
      state: 'failed',
      message: next(),
      ...none,
    })
    .run();
  const what = { jobId, ...none };
  edit(db, jobId, next(), (e) => {
    e.insert('workItems', {
      ...what,
      id: newId(workItemIdSchema),
      what: next(),
      origin: 'asked',
      charge: 'agreed',
      priceMinor: 100,
      currency: 'EUR',
      outcome: 'open',
      why: next(),
      begun: moment,
      ended: null,
    });
    e.insert('parts', {
      ...what,
      id: newId(partIdSchema),
      what: next(),
      deed: 'fitted',
      source: 'stock',
      fate: null,
      doubt: next(),
      doubtBasis: 'stated',
      evidence: next(),
      moment,
    });
    e.insert('claims', {
      ...what,
      id: newId(claimIdSchema),
      instrumentId,
      kind: 'year',
      subject: next(),
      value: next(),
      basis: 'stated',
      evidence: next(),
      moment,
      readingId: null,
      sure: 'likely',
    });
    e.insert('markers', {
      ...what,
      id: newId(markerIdSchema),
      takeId,
      kind: 'work',
      title: next(),
      note: next(),
      ms: 1,
      endMs: null,
      public: true,
    });
    e.insert('readings', {
      ...what,
      id: newId(readingIdSchema),
      takeId,
      ms: 1,
      kind: 'resistance',
      open: false,
      valueText: '4.08',
      unit: 'kΩ',
      baseValue: 4080,
      subject: next(),
      between: ['tip', 'sleeve'],
      basis: 'measured',
      meterId: null,
      details: { jack: { position: next(), thrown: [next()], down: [] } },
      note: next(),
    });
    e.insert('traces', {
      ...what,
      id: traceId,
      subject: next(),
      conductors: ['red', 'white'],
      shield: true,
      frame: false,
      rows: ['slug'],
      assumed: [{ ends: ['red', 'white'], row: null, positive: null, fromSubject: next() }],
      planId: null,
    });
  });
  edit(db, jobId, next(), (e) => {
    e.insert('outcomes', {
      ...what,
      id: newId(outcomeIdSchema),
      traceId,
      takeId,
      ms: 1,
      outcome: {
        subject: next(),
        plan: 'series',
        title: next(),
        lines: [{ role: 'hot', ends: ['red'], goesTo: next(), inside: false, basis: 'measured' }],
        hot: ['red'],
        ground: ['white'],
        shield: 'ground',
        insulated: [],
        basis: 'measured',
        moment: null,
      },
    });
    e.insert('harnesses', {
      ...what,
      id: harnessIdSchema.parse(jobId),
      harness: harnessSchema.parse({
        pickups: [{ id: 'neck', subject: next(), coils: [{ name: next(), ohms: 4000 }] }],
        positions: [{ name: next(), on: ['neck'] }],
      }),
    });
    e.insert('narrationLines', {
      id: newId(narrationLineIdSchema),
      jobId,
      takeId,
      startMs: 1,
      endMs: 2,
      text: next(),
      voice: next(),
      heardText: next(),
    });
    e.insert('proposals', {
      id: newId(proposalIdSchema),
      jobId,
      takeId,
      key: newId(jobIdSchema),
      startMs: 1,
      endMs: 2,
      heard: {
        type: 'work',
        key: 'work:1:abc',
        startMs: 1,
        endMs: 2,
        words: next(),
        confidence: 0.9,
        about: next(),
        payload: {
          description: next(),
          origin: 'offered',
          outcome: 'promised',
          charge: 'free',
          promisedAt: null,
          unheardUntil: null,
        },
      },
      decision: 'open',
      promisedAt: null,
      recordId: null,
    });
  });
  db.insert(keptTickets)
    .values({ jobId, ticket: JSON.stringify({ title: next() }), findable: next() })
    .run();
  return { jobId, instrumentId, takeId };
}

/** Another step in the history of everything that was just written: each text is changed, and can be changed back. */
export function rewriteJob(db: Database, jobId: JobId, instrumentId: string, next: NextText) {
  const marker = db
    .select()
    .from(markers)
    .all()
    .find((row) => row.jobId === jobId);
  if (!marker) throw new Error('The job has no marker');
  const first = edit(db, jobId, next(), (e) => {
    e.update('markers', marker.id, { title: next(), note: next() });
    e.update('jobs', jobId, { title: next(), place: next() });
  });
  const second = edit(db, null, next(), (e) => e.update('instruments', instrumentId, { features: next() }));
  return [first.change, second.change];
}

/** Words that belong to no job. */
export function writeWorkshop(db: Database, next: NextText): void {
  const id = newId(clientIdSchema);
  db.insert(meters)
    .values({ id: newId(meterIdSchema), name: next(), ranges: [], ...none })
    .run();
  db.insert(settings)
    .values({ key: 'slang', value: { slang: [{ said: next(), means: next() }] } })
    .onConflictDoNothing()
    .run();
  db.insert(clients)
    .values({ id, name: 'Mungo Ironside', alias: 'a client', ...none })
    .run();
  edit(db, null, next(), (e) => e.update('clients', id, { notes: next(), alias: next() }));
}
