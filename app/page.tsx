import { database } from '@/db/open';
import { listFolders } from '@/lib/media/store';
import { dayOf } from '@/lib/work';
import { listBin, rackOf } from '@/lib/work/store';
import { Bench } from './_bench/bench';
import { hung, ticketsAtFirst } from './_bench/find-tickets';

export const dynamic = 'force-dynamic';

export default function BenchPage() {
  const db = database();
  const now = Date.now();
  const { jobs, total } = rackOf(db, { find: '', limit: ticketsAtFirst });
  return (
    <Bench
      tickets={jobs.map((ticket) => hung(ticket, now))}
      total={total}
      today={dayOf(now)}
      folderNamed={listFolders(db).length > 0}
      binned={listBin(db).length}
      madeAt={now}
    />
  );
}
