import { ButtonLink } from '@/app/_parts/button';
import styles from './_desk/desk.module.css';

export default function NoSuchJob() {
  return (
    <main className={styles.lost}>
      <h1>There is no such job on the bench.</h1>
      <p>
        It may lie in the bin: look at the foot of the bench page. Recordings are never deleted with a job.
      </p>
      <ButtonLink href="/">To the bench</ButtonLink>
    </main>
  );
}
