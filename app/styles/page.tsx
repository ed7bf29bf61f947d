import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { Samples } from './_samples/samples';
import { Tokens } from './_samples/tokens';
import styles from './styles.module.css';

export const metadata: Metadata = { title: 'Style guide' };

/** Tokens and parts at one glance, for those who work on the pages. */
export default function StyleGuide() {
  if (process.env.NODE_ENV === 'production') notFound();
  return (
    <main className={styles.page}>
      <h1 className={styles.title}>Style guide</h1>
      <p>
        A paper job ticket and an engraved scale. Numerals in the mono face, a shape and a word for each
        marker kind, no target smaller than 44 pixels.
      </p>
      <Tokens />
      <Samples />
    </main>
  );
}
