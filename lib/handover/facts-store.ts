import type { Database } from '@/db/open';
import { layOut } from '@/lib/film';
import { onClock } from '@/lib/film/store';
import { cautions, cautionsFor } from '@/lib/safety';
import { getJackView, getTraceView } from '@/lib/wiring/store';
import { dayOf } from '@/lib/work';
import { getJobRecord, workshopOf } from '@/lib/work/store';
import type { JobId } from '@/shared/ids';
import type { HandoverFacts } from './facts';
import { keptOf } from './kept-store';
import { publishedFilm } from './published';
import { chaptersOfPublished } from './published-chapters';

/** All that the documents of a job are made from, as it stands now. */
export function handoverFactsOf(db: Database, jobId: JobId): HandoverFacts {
  const record = getJobRecord(db, jobId);
  const published = publishedFilm(layOut(record.takes.map(onClock)), keptOf(db, jobId).cut.cutAway);
  const keys = cautionsFor({
    instrumentType: record.instrument.type,
    readings: record.readings,
    words: record.markers.map(({ title }) => title),
  });
  return {
    record,
    traces: record.traces.map(({ id }) => getTraceView(db, id)),
    jack: getJackView(db, jobId),
    workshop: workshopOf(db),
    published,
    chapters: chaptersOfPublished(published, record.markers, record.job.title).chapters,
    cautions: keys.map((key) => cautions[key]),
    today: dayOf(Date.now()),
  };
}
