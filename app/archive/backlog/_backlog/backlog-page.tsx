'use client';

import { useRouter } from 'next/navigation';
import type { Backlog, BacklogView, JobRule } from '@/shared/backlog';
import type { Folder } from '@/shared/takes';
import styles from './backlog.module.css';
import { ChooseFolder } from './choose-folder';
import { PlanSheet } from './plan-sheet';
import { ResultSheet } from './result-sheet';
import { TaskProgress } from './task-progress';
import { isUnderWay } from './use-task';

interface BacklogPageProps {
  folders: readonly Folder[];
  backlogs: readonly Pick<Backlog, 'id' | 'folder' | 'under'>[];
  view: BacklogView | null;
  rule: JobRule;
}

/** Older recordings become jobs in three steps: the folder, what they become, the import. */
export function BacklogPage({ folders, backlogs, view, rule }: BacklogPageProps) {
  const router = useRouter();
  const refresh = () => router.refresh();
  const looking = isUnderWay(view?.look ?? null);
  const importing = isUnderWay(view?.import ?? null);
  return (
    <main className={styles.page}>
      <h1 className={styles.title}>Import older recordings</h1>
      <p>
        A folder of recordings from before becomes jobs, with the captions that lie beside them, so that the
        archive can be asked about them. Run it again later: only what is new is added.
      </p>
      <ChooseFolder folders={folders} before={backlogs} shown={view} underWay={looking || importing} />
      {view && isUnderWay(view.look) && (
        <section className={styles.sheet} aria-label="Looking through">
          <TaskProgress
            task={view.look}
            words="Looking through the folder"
            off="What was looked at is kept for the next time."
            onEnd={refresh}
          />
        </section>
      )}
      {view && !looking && view.lookedAt === null && (
        <section className={styles.sheet} aria-label="Looking through">
          <p role="status">{view.look?.message ?? 'It was not looked through to the end.'}</p>
          <p>Look through the folder again to go on.</p>
        </section>
      )}
      {view?.plan && !looking && !importing && (
        <PlanSheet id={view.id} plan={view.plan} rule={rule} onOrdered={refresh} />
      )}
      {view?.import && <ResultSheet view={view} onEnd={refresh} />}
    </main>
  );
}
