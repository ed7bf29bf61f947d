import Link from 'next/link';
import { memo } from 'react';
import { counted } from '@/app/_parts/words';
import styles from './clients.module.css';
import { behindLetters, type IndexCard } from './find-clients';

/** Cards behind their letters, as in a drawer. */
export const Cards = memo(function Cards({ cards }: { cards: readonly IndexCard[] }) {
  return (
    <div className={styles.drawer}>
      {behindLetters(cards).map(({ letter, cards: behind }) => (
        <section key={`${letter} ${behind[0]?.id}`} className={styles.tab}>
          <h2 className={styles.letter}>{letter}</h2>
          <ul className={styles.cards}>
            {behind.map((card) => (
              <Card key={card.id} card={card} />
            ))}
          </ul>
        </section>
      ))}
    </div>
  );
});

function Card({ card }: { card: IndexCard }) {
  return (
    <li className={styles.card}>
      <Link href={`/clients/${card.id}`} prefetch={false} className={styles.link}>
        {card.name}
      </Link>
      <p className={styles.soft}>{whatThereIs(card)}</p>
      {card.reach !== null && <p className={styles.reach}>{card.reach.split('\n', 1)}</p>}
    </li>
  );
}

function whatThereIs({ jobs, instruments, touched }: IndexCard): string {
  return [
    jobs === 0 ? 'no jobs' : counted(jobs, 'job'),
    ...(instruments > 0 ? [counted(instruments, 'instrument')] : []),
    ...(touched === null ? [] : [`last touched ${touched}`]),
  ].join(' · ');
}
