import type { Database } from '@/db/open';

/** An archive of invented jobs, as large as a workshop's life, the same every time. */

const types = ['electric guitar', 'bass guitar', 'acoustic guitar', 'mandolin', 'banjo', 'valve amplifier'];
const markerKinds = ['intake', 'diagnosis', 'measurement', 'work', 'result'];

/** From the commonest on; each is said about as often as its place says (Zipf's law). */
export const said = `
pickup string neck bridge wire pot hum solder buzz volume jack tone switch nut fret action screw coil ground cable
guitar red white black green hot shield crackle loose body saddle tuner string tight reading meter kilohm open dead
scratchy cavity lug cap capacitor glue crack clamp brace top back side binding rosette headstock truss rod relief
fingerboard level crown dress polish bone slot file intonation octave tremolo spring block arm socket plug lead amp
valve bias plate socket resistor speaker cone rattle fuse transformer choke heater hiss squeal chassis board trace
humbucker single slug screw parallel series phase polarity magnet bobbin wax potting cover foil copper tape paint
scratchplate pickguard battery preamp piezo undersaddle endpin strap button tailpiece roller gear bushing peg friction
soundpost bassbar purfling edge ding dent lacquer shellac sand buff steam iron hide wedge shim bolt heel pocket
`
  .trim()
  .split(/\s+/);

const talk = `
so that looks about right now then let me see what this one does when i turn it over and listen again because it was
not there before we will try the other way round first and leave it for a bit while it dries hold on a second here
`
  .trim()
  .split(/\s+/);

/** A row of numbers that is the same every time (Park and Miller's "minimal standard", CACM 31, 1988). */
function numbers(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state * 48_271) % 2_147_483_647;
    return state / 2_147_483_647;
  };
}

const syllables =
  'ba be bi bo bu da de di do du fa fe ga ge go ka ke ki ko la le li lo ma me mi mo na ne ni no'.split(' ');
/** A seldom word: one of 27 000. */
export function seldom(nth: number): string {
  return [nth % 30, Math.floor(nth / 30) % 30, Math.floor(nth / 900) % 30, 7]
    .map((each) => syllables[each] ?? 'zu')
    .join('');
}

export interface Size {
  jobs: number;
  /** Of each job. */
  markers: number;
  readings: number;
  lines: number;
}

export function makeArchive(db: Database, { jobs, markers, readings, lines }: Size): void {
  const next = numbers(4711);
  const pick = (words: readonly string[]) => words[Math.floor(next() * words.length)] ?? 'hum';
  const trade = () => said[Math.floor(said.length ** next() - 1)] ?? 'hum';
  const word = () => (next() < 0.02 ? seldom(Math.floor(27_000 * next() ** 2)) : trade());
  const line = () =>
    Array.from({ length: 7 + Math.floor(next() * 8) }, () => (next() < 0.62 ? pick(talk) : word())).join(' ');
  const ask = inserts(db);
  const id = (of: string, nth: number) => `${of}${String(nth).padStart(19, '0')}`;
  ask.folder.run(id('f', 0));
  for (let nth = 1; nth <= jobs; nth++) {
    const [job, take] = [id('j', nth), id('t', nth)];
    const at = 1_600_000_000_000 + nth * 60_000_000;
    const day = new Date(at).toISOString().slice(0, 10);
    ask.client.run(id('c', nth), `Client ${seldom(nth * 7)} Plainly`);
    ask.instrument.run(id('i', nth), types[nth % types.length], id('c', nth));
    ask.job.run(job, nth, `${trade()} ${trade()} and ${word()}`, id('c', nth), id('i', nth), day, at, at);
    ask.recording.run(id('r', nth), id('f', 0), `take-${nth}.mp4`, at, at);
    ask.take.run(take, job, id('r', nth), at);
    for (let each = 0; each < markers; each++) {
      const kind = markerKinds[each % markerKinds.length];
      ask.marker.run(
        id('m', nth * 1000 + each),
        job,
        take,
        kind,
        `${trade()} ${word()} ${trade()}`,
        each * 90_000,
      );
    }
    for (let each = 0; each < readings; each++) {
      const kilohms = (2 + next() * 14).toFixed(2);
      const ms = each * 100_000 + 5000;
      ask.reading.run(
        id('e', nth * 1000 + each),
        job,
        take,
        ms,
        kilohms,
        Number(kilohms) * 1000,
        `${trade()} pickup`,
      );
    }
    for (let each = 0; each < lines; each++)
      ask.line.run(id('l', nth * 1000 + each), job, take, each * 4000, each * 4000 + 3500, line());
  }
}

function inserts({ $client }: Database) {
  const into = (table: string, columns: string, values: string) =>
    $client.prepare(`insert into ${table} (${columns}) values (${values})`);
  return {
    folder: into('folders', 'id, path, created_at', "?, '/invented', 0"),
    client: into('clients', 'id, name, alias, created_at', "?, ?, 'a client', 0"),
    instrument: into('instruments', 'id, type, client_id, created_at', '?, ?, ?, 0'),
    job: into(
      'jobs',
      'id, number, title, client_id, instrument_id, received_on, created_at, updated_at',
      '?, ?, ?, ?, ?, ?, ?, ?',
    ),
    recording: into(
      'recordings',
      'id, folder_id, path, size_bytes, modified_at, state, stills, created_at',
      "?, ?, ?, 1, ?, 'ready', '[0]', ?",
    ),
    take: into('takes', 'id, job_id, recording_id, created_at', '?, ?, ?, ?'),
    marker: into(
      'markers',
      'id, job_id, take_id, kind, title, ms, public, created_at',
      '?, ?, ?, ?, ?, ?, 1, 0',
    ),
    reading: into(
      'readings',
      'id, job_id, take_id, ms, kind, open, value_text, unit, base_value, subject, basis, details, created_at',
      "?, ?, ?, ?, 'resistance', 0, ?, 'kΩ', ?, ?, 'measured', '{}', 0",
    ),
    line: into('narration_lines', 'id, job_id, take_id, start_ms, end_ms, text', '?, ?, ?, ?, ?, ?'),
  };
}
