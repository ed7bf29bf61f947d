import { ButtonLink } from '@/app/_parts/button';
import styles from './_client/client.module.css';

export default function NoSuchClient() {
  return (
    <main className={styles.lost}>
      <h1>There is no such client.</h1>
      <p>The entry may have been taken off, made one with another, or erased.</p>
      <ButtonLink href="/clients">To the clients</ButtonLink>
    </main>
  );
}
