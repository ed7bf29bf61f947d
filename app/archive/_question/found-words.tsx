import type { Found } from '@/shared/archive';
import styles from './answers.module.css';

/** The words around what matched, where they are not the title over again. */
export function Words({ found }: { found: Found }) {
  if (found.words.length === 0 || isTitle(found)) return null;
  return (
    <p className={styles.words}>
      <Marked words={found.words} />
    </p>
  );
}

export function Title({ found }: { found: Found }) {
  return isTitle(found) ? <Marked words={found.words} /> : found.title;
}

function isTitle({ title, words }: Found): boolean {
  const plain = (text: string) => text.replace(/\s+/g, ' ').trim();
  return plain(words.map(({ text }) => text).join('')) === plain(title);
}

/** What matched is marked. */
function Marked({ words }: Pick<Found, 'words'>) {
  return words.map(({ text, matched }, at) =>
    // biome-ignore lint/suspicious/noArrayIndexKey: pieces of one text, which never change places.
    matched ? <mark key={at}>{text}</mark> : text,
  );
}
