'use client';

import { buttonClass } from '@/app/_parts/button';
import {
  type ExportScope,
  type ExportTable,
  exportTables,
  type GiveOutPreview,
} from '@/shared/archive-exports';
import { type Chosen, downloads } from './chosen';
import styles from './give-out.module.css';

const tableWords: Readonly<Record<ExportTable, string>> = {
  moments: 'Moments',
  readings: 'Readings',
  conductors: 'Conductors',
};

interface DownloadsProps {
  chosen: Chosen;
  counts: GiveOutPreview['counts'];
  /** The counts belong to another choice. */
  isBehind: boolean;
}

/** What can be taken away: the public set first, and apart from it what is for the bench alone. */
export function Downloads({ chosen, counts, isBehind }: DownloadsProps) {
  return (
    <section className={styles.section} aria-labelledby="downloads">
      <h2 id="downloads">Take it away</h2>
      {counts.jobs === 0 && !isBehind ? (
        <p>Nothing of this part may go out yet.</p>
      ) : (
        <>
          <p>
            The pages come as one ZIP with their own search and the tables in it. Unpack it, look through it,
            and put it on any web host; it opens from a disk too. Thousands of jobs take about a minute.
          </p>
          <p className={styles.row}>
            <Download href={downloads.pages(chosen)} isMain>
              Pages for the web (ZIP)
            </Download>
            <Files chosen={chosen} scope="public" />
          </p>
        </>
      )}
      <details className={styles.private}>
        <summary className={styles.more}>Everything, private</summary>
        <p>
          For the bench alone: the same part with every marker and every word, with names of clients, serials
          and prices. Do not publish these files.
        </p>
        <p className={styles.row}>
          <Files chosen={chosen} scope="everything" />
        </p>
      </details>
    </section>
  );
}

function Files({ chosen, scope }: { chosen: Chosen; scope: ExportScope }) {
  const more = scope === 'everything' ? ', everything, private' : '';
  return (
    <>
      {exportTables.map((which) => (
        <Download key={which} href={downloads.csv(chosen, scope, which)}>
          {tableWords[which]}
          {more} (CSV)
        </Download>
      ))}
      <Download href={downloads.json(chosen, scope)}>All of it{more} (JSON)</Download>
    </>
  );
}

function Download({
  href,
  isMain = false,
  children,
}: {
  href: string;
  isMain?: boolean;
  children: React.ReactNode;
}) {
  return (
    <a href={href} download className={buttonClass(isMain ? 'main' : 'plain')}>
      {children}
    </a>
  );
}
