'use client';

import Link from 'next/link';
import { usePathname } from 'next/navigation';
import styles from '../archive.module.css';

const ways = [
  { href: '/archive', word: 'Ask' },
  { href: '/archive/reference', word: 'Reference' },
  { href: '/archive/backlog', word: 'Import recordings' },
  { href: '/archive/give-out', word: 'Give out' },
] as const;

/** The archive's own places. */
export function ArchiveWays() {
  const path = usePathname();
  return (
    <nav className={styles.ways} aria-label="Archive">
      {ways.map(({ href, word }) => (
        <Link
          key={href}
          href={href}
          prefetch={false}
          className={styles.way}
          aria-current={
            path === href ? 'page' : href !== '/archive' && path.startsWith(`${href}/`) ? 'true' : undefined
          }
        >
          {word}
        </Link>
      ))}
    </nav>
  );
}
