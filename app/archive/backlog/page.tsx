import type { Metadata } from 'next';
import { database } from '@/db/open';
import { listBacklogs, viewBacklog } from '@/lib/archive/store';
import { listFolders } from '@/lib/media/store';
import { backlogIdSchema, jobRuleSchema } from '@/shared/backlog';
import { BacklogPage } from './_backlog/backlog-page';

export const dynamic = 'force-dynamic';
export const metadata: Metadata = { title: 'Import recordings · Archive' };

interface Props {
  searchParams: Promise<Record<string, string | string[] | undefined>>;
}

export default async function BacklogImportPage({ searchParams }: Props) {
  const asked = await searchParams;
  const db = database();
  const backlogs = listBacklogs(db);
  const rule = jobRuleSchema.catch('usual').parse(asked.rule);
  const at = backlogIdSchema.safeParse(asked.at).data;
  // An address that was kept may name a folder that has been forgotten since.
  const known = backlogs.find(({ id }) => id === at);
  return (
    <BacklogPage
      key={known?.id ?? ''}
      folders={listFolders(db)}
      backlogs={backlogs}
      view={known ? viewBacklog(db, known.id, rule) : null}
      rule={rule}
    />
  );
}
