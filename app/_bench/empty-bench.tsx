import { Button, ButtonLink } from '@/app/_parts/button';
import { DemonstrationButton } from '@/app/_parts/demonstration-button';
import styles from './bench.module.css';

/** What to do on a bench that holds nothing yet. */
export function EmptyBench({ folderNamed, onBookIn }: { folderNamed: boolean; onBookIn: () => void }) {
  return (
    <section className={styles.empty}>
      <h1 className={styles.title}>The bench is clear.</h1>
      <p>
        Book in the first job: a title and the instrument are enough. Then add the recordings of it; they stay
        where they are, and the record grows along them.
      </p>
      <Button weight="main" onClick={onBookIn}>
        Book in a job
      </Button>
      {!folderNamed && (
        <>
          <p>Benchtake only looks into folders that you name.</p>
          <ButtonLink href="/settings">Name a recordings folder</ButtonLink>
        </>
      )}
      <p>Nothing filmed yet? An invented job with three short takes shows how it goes.</p>
      <DemonstrationButton />
    </section>
  );
}
