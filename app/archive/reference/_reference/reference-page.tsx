import Link from 'next/link';
import styles from './reference.module.css';

const tables = [
  { href: '/archive/reference', word: 'Pickups traced' },
  { href: '/archive/reference/readings', word: 'Readings' },
  { href: '/archive/reference/faults', word: 'Faults and fixes' },
] as const;
export type TableAddress = (typeof tables)[number]['href'];

interface ReferencePageProps {
  here: TableAddress;
  children: React.ReactNode;
}

/** What all jobs together teach: one of the three tables, with the ways to the others. */
export function ReferencePage({ here, children }: ReferencePageProps) {
  return (
    <main className={styles.page}>
      <h1 className={styles.title}>The shop’s own reference</h1>
      <nav className={styles.tables} aria-label="Tables of the reference">
        {tables.map(({ href, word }) => (
          <Link
            key={href}
            href={href}
            className={styles.table}
            aria-current={href === here ? 'page' : undefined}
          >
            {word}
          </Link>
        ))}
      </nav>
      {children}
    </main>
  );
}
