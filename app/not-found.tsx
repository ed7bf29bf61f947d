import { ButtonLink } from './_parts/button';
import styles from './jobs/[job]/_desk/desk.module.css';

export default function NoSuchPage() {
  return (
    <main className={styles.lost}>
      <h1>There is no such page.</h1>
      <p>Everything starts on the bench.</p>
      <ButtonLink href="/">To the bench</ButtonLink>
    </main>
  );
}
