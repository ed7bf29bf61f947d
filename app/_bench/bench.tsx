'use client';

import Link from 'next/link';
import { useState } from 'react';
import { BundleIn } from '@/app/_parts/bundle-in';
import { Button, buttonClass } from '@/app/_parts/button';
import styles from './bench.module.css';
import { Bin } from './bin';
import { BookIn } from './book-in';
import { EmptyBench } from './empty-bench';
import type { HungTicket } from './find-tickets';
import { Rack } from './rack';
import { useFreshPage } from './use-fresh-page';

interface BenchProps {
  /** The first tickets of the rack, in its order. */
  tickets: HungTicket[];
  /** How many tickets hang in the rack. */
  total: number;
  /** The workshop's day (ISO 8601). */
  today: string;
  folderNamed: boolean;
  /** Jobs that lie in the bin. */
  binned: number;
  /** When the server made this page. */
  madeAt: number;
}

/** The bench: a rack of job tickets. */
export function Bench({ tickets, total, today, folderNamed, binned, madeAt }: BenchProps) {
  const [open, setOpen] = useState<'book-in' | 'bin' | 'bundle' | null>(null);
  useFreshPage(madeAt);
  const close = () => setOpen(null);
  const bookIn = () => setOpen('book-in');
  return (
    <main className={styles.bench}>
      {total === 0 ? (
        <EmptyBench folderNamed={folderNamed} onBookIn={bookIn} />
      ) : (
        <Rack tickets={tickets} total={total} today={today} madeAt={madeAt} onBookIn={bookIn} />
      )}
      <footer className={styles.foot}>
        <Link href="/send" prefetch={false} className={buttonClass('bare')}>
          Send a recording from this device
        </Link>
        <Button weight="bare" onClick={() => setOpen('bundle')}>
          Bring in a bundle
        </Button>
        {binned > 0 && (
          <Button weight="bare" onClick={() => setOpen('bin')}>
            Bin ({binned})
          </Button>
        )}
      </footer>
      <BookIn
        open={open === 'book-in'}
        onClose={close}
        usedTypes={tickets.map((ticket) => ticket.instrument.type)}
      />
      <Bin open={open === 'bin'} onClose={close} />
      <BundleIn open={open === 'bundle'} onClose={close} />
    </main>
  );
}
