'use client';

import { useState } from 'react';
import { Button } from '@/app/_parts/button';
import styles from './bench.module.css';
import { Bin } from './bin';
import { BookIn } from './book-in';
import { EmptyBench } from './empty-bench';
import type { HungTicket } from './find-tickets';
import { Rack } from './rack';
import { useFreshPage } from './use-fresh-page';

interface BenchProps {
  /** The one touched last first. */
  tickets: HungTicket[];
  folderNamed: boolean;
  /** Jobs that lie in the bin. */
  binned: number;
  /** When the server made this page. */
  madeAt: number;
}

/** The bench: a rack of job tickets. */
export function Bench({ tickets, folderNamed, binned, madeAt }: BenchProps) {
  const [open, setOpen] = useState<'book-in' | 'bin' | null>(null);
  useFreshPage(madeAt);
  const close = () => setOpen(null);
  return (
    <main className={styles.bench}>
      {tickets.length === 0 ? (
        <EmptyBench folderNamed={folderNamed} onBookIn={() => setOpen('book-in')} />
      ) : (
        <Rack tickets={tickets} onBookIn={() => setOpen('book-in')} />
      )}
      {binned > 0 && (
        <footer className={styles.foot}>
          <Button weight="bare" onClick={() => setOpen('bin')}>
            Bin ({binned})
          </Button>
        </footer>
      )}
      <BookIn
        open={open === 'book-in'}
        onClose={close}
        usedTypes={tickets.map((ticket) => ticket.instrument.type)}
      />
      <Bin open={open === 'bin'} onClose={close} />
    </main>
  );
}
