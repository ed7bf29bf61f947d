'use client';

import { CSPProvider } from '@base-ui/react/csp-provider';
import Link from 'next/link';
import { usePathname } from 'next/navigation';
import { createContext, useContext } from 'react';
import { z } from 'zod';
import { NoticesProvider } from './notices';
import styles from './shell.module.css';

// zod would probe for eval, which the page’s policy refuses.
z.config({ jitless: true });

const ways = [
  { href: '/', word: 'Bench', pages: ['/jobs/'] },
  { href: '/clients', word: 'Clients', pages: ['/clients/'] },
  { href: '/archive', word: 'Archive', pages: ['/archive/'] },
  { href: '/settings', word: 'Settings', pages: ['/settings/'] },
] as const;

/** Whether a way leads to the page shown, or to the one that it belongs to (WAI-ARIA 1.2, aria-current). */
function currentOn(path: string, { href, pages }: (typeof ways)[number]): 'page' | 'true' | undefined {
  if (path === href) return 'page';
  return pages.some((start) => path.startsWith(start)) ? 'true' : undefined;
}

const NonceContext = createContext<string | undefined>(undefined);

/** The nonce that styles made in the page must carry. */
export function useNonce(): string | undefined {
  return useContext(NonceContext);
}

export function Shell({ nonce, children }: { nonce: string | undefined; children: React.ReactNode }) {
  const path = usePathname();
  return (
    <NonceContext value={nonce}>
      <CSPProvider nonce={nonce}>
        <NoticesProvider>
          {/* biome-ignore lint/a11y/useValidAnchor: it is a way to a place on the page; the click only keeps the address clean. */}
          <a href="#page" className={styles.skip} onClick={skipToPage}>
            To the page
          </a>
          <header className={styles.bar}>
            <Link href="/" className={styles.name}>
              <Mark />
              Benchtake
            </Link>
            <nav className={styles.ways} aria-label="Pages">
              {ways.map((way) => (
                <Link
                  key={way.href}
                  href={way.href}
                  className={styles.way}
                  aria-current={currentOn(path, way)}
                >
                  {way.word}
                </Link>
              ))}
            </nav>
          </header>
          <div id="page" tabIndex={-1} className={styles.page}>
            {children}
          </div>
        </NoticesProvider>
      </CSPProvider>
    </NonceContext>
  );
}

/** An address with a hash made here would be an entry of the history that Back cannot show again. */
function skipToPage(event: React.MouseEvent): void {
  event.preventDefault();
  document.getElementById('page')?.focus();
}

/** A tie-on ticket with an engraved scale. */
function Mark() {
  return (
    <svg
      width="26"
      height="20"
      viewBox="0 0 26 20"
      aria-hidden="true"
      fill="none"
      stroke="currentColor"
      strokeWidth="1.6"
    >
      <path d="M7 1h18v18H7L1 10z" strokeLinejoin="round" />
      <circle cx="7.5" cy="10" r="1.6" />
      <path d="M12 19v-6M15 19v-4M18 19v-6M21 19v-4" stroke="var(--brass-bright)" />
    </svg>
  );
}
