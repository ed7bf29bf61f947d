import { database } from '@/db/open';
import { listFolders } from '@/lib/media/store';
import { listBin, listTickets } from '@/lib/work/store';
import { Bench } from './_bench/bench';
import { lastTouched } from './_parts/words';

export const dynamic = 'force-dynamic';

export default function BenchPage() {
  const db = database();
  const now = Date.now();
  const tickets = listTickets(db).map((ticket) => ({
    ...ticket,
    touched: lastTouched(ticket.updatedAt, now),
  }));
  return (
    <Bench
      tickets={tickets}
      folderNamed={listFolders(db).length > 0}
      binned={listBin(db).length}
      madeAt={now}
    />
  );
}
