import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { closeDatabase, type Database, openDatabase } from '@/db/open';
import { rebuildArchive, searchArchive } from '@/lib/archive/store';
import { archiveQuerySchema } from '@/shared/archive';
import { makeArchive, said } from './archive-made';
import { questionsOfBench } from './archive-questions';
import { type Row, time } from './table';

const size = { jobs: 3000, markers: 17, readings: 17, lines: 334 };
const today = '2026-11-25';

/** The archive of 3 000 jobs, 102 000 markers and readings and a million spoken lines, against SQLite's own FTS5. */
export async function archive(): Promise<Row[]> {
  const home = mkdtempSync(join(tmpdir(), 'benchtake-archive-'));
  try {
    const db = openDatabase(home, 'db/migrations');
    db.transaction(() => makeArchive(db, size));
    const rebuilt = await time(() => rebuildArchive(db));
    const rows = [...(await asked(db)), grown(db), await added(db)];
    const whole = { ours: rebuilt / 1000, reference: null, referenceName: '', unit: 's' };
    return [...rows, { name: 'the index of it all made anew', ...whole, target: 'at leisure, take by take' }];
  } finally {
    closeDatabase();
    rmSync(home, { recursive: true });
  }
}

/** Of so many rounds the best counts, of ours and of the reference: a noisy machine disturbs both. */
const rounds = 3;

async function asked(db: Database): Promise<Row[]> {
  const plain = plainIndex(db);
  const questions = questionsOfBench();
  for (const q of questions.slice(0, 20)) searchArchive(db, archiveQuerySchema.parse({ q, today }));
  const ours: number[][] = [];
  const theirs: number[][] = [];
  for (let round = 0; round < rounds; round++) {
    const [own, other]: [number[], number[]] = [[], []];
    for (const q of questions) {
      const any = [...q.matchAll(/[a-z]+/g)].map(([word]) => `"${word}"`).join(' OR ');
      other.push(await time(() => plain.all(any)));
      own.push(await time(() => searchArchive(db, archiveQuerySchema.parse({ q, today }))));
    }
    ours.push(own);
    theirs.push(other);
  }
  const bestOf = (times: readonly number[][], part: number) =>
    Math.min(...times.map((round) => quantile(round, part)));
  const rest = { referenceName: 'the same words, any of them, MATCH … ORDER BY rank LIMIT 20', unit: 'ms' };
  const at = (part: number, name: string, target: string): Row => ({
    ...{ name, ours: bestOf(ours, part), reference: bestOf(theirs, part), target },
    ...rest,
  });
  return [
    at(0.5, 'a question to the archive, median of 200', 'within 2 ×'),
    at(0.95, 'a question to the archive, 95th of 100', 'under 60 ms, within 2 ×'),
  ];
}

/** Lines and titles in one plain FTS5 table, without any of ours. */
function plainIndex({ $client }: Database) {
  $client.exec(`create virtual table plain using fts5(text, content='', tokenize='porter unicode61 remove_diacritics 2');
    insert into plain(text) select text from narration_lines;
    insert into plain(text) select title from markers;`);
  return $client.prepare('select rowid from plain where plain match ? order by rank limit 20');
}

/** All tables of the archive against the texts that it is made from, in megabytes. */
function grown({ $client }: Database): Row {
  const bytes = (sql: string) => Number($client.prepare(sql).pluck().get()) / 1e6;
  return {
    name: 'the archive on disk',
    ours: bytes("select sum(pgsize) from dbstat where name like '%archive%'"),
    reference: bytes(`select (select sum(octet_length(text)) from narration_lines)
      + (select sum(octet_length(title)) from markers) + (select sum(octet_length(subject)) from readings)
      + (select sum(octet_length(title)) from jobs)`),
    ...{ referenceName: 'the texts alone', unit: 'MB', target: 'within 1 ×' },
  };
}

/** 400 lines put to a job, taken in, and found: to a job each round. */
async function added(db: Database): Promise<Row> {
  const ours: number[] = [];
  for (let round = 0; round < rounds; round++) {
    const word = `zebrano${'abc'.charAt(round)}`;
    sayMore(db, round, word);
    let answers = 0;
    ours.push(
      await time(() => {
        answers = searchArchive(db, archiveQuerySchema.parse({ q: word, today })).answers.length;
      }),
    );
    if (answers !== 1) throw new Error('What was added was not found.');
  }
  const rest = { reference: null, referenceName: '', unit: 'ms', target: 'under 50 ms' };
  return { name: '400 lines more in a job, taken in and found', ours: Math.min(...ours), ...rest };
}

/** @param nth of the takes, to which the lines go */
function sayMore({ $client }: Database, nth: number, word: string): void {
  const line = $client.prepare(
    `insert into narration_lines (id, job_id, take_id, start_ms, end_ms, text)
      select ?, job_id, id, ?, ?, ? from takes limit 1 offset ?`,
  );
  $client.transaction(() => {
    for (let at = 0; at < 400; at++) {
      const text = Array.from({ length: 9 }, (_, each) => said[(at * 7 + each * 13) % said.length]).join(' ');
      const startMs = 3_600_000 + at * 4000;
      line.run(`x${nth}${String(at).padStart(18, '0')}`, startMs, startMs + 3000, `${text} ${word}`, nth);
    }
  })();
}

function quantile(values: readonly number[], part: number): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(part * sorted.length))] ?? 0;
}
