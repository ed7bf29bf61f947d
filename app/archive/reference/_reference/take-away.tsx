import { addressWith } from './asked';
import styles from './reference.module.css';

interface TakeAwayProps {
  route: string;
  parts: Readonly<Record<string, string>>;
}

/** The table as it is asked for, as a file. */
export function TakeAway({ route, parts }: TakeAwayProps) {
  const address = (as: string) => addressWith(route, { ...parts, limit: 1000, as });
  return (
    <p className={styles.takeAway}>
      This table as{' '}
      <a href={address('csv')} download>
        CSV
      </a>{' '}
      or{' '}
      <a href={address('json')} download>
        JSON
      </a>
      <span className={styles.soft}> (up to 1,000 lines)</span>
    </p>
  );
}
