import styles from './hand-over.module.css';

interface SectionProps {
  /** Addresses lead here by it. */
  id: string;
  title: string;
  children: React.ReactNode;
}

/** A part of the page under its own head. */
export function Section({ id, title, children }: SectionProps) {
  return (
    <section id={id} tabIndex={-1} className={styles.section} aria-labelledby={`${id}-head`}>
      <h2 id={`${id}-head`}>{title}</h2>
      {children}
    </section>
  );
}

/** A step of a document under its own head. */
export function Step({ id, title, children }: SectionProps) {
  return (
    <section id={id} tabIndex={-1} className={styles.step} aria-labelledby={`${id}-head`}>
      <h3 id={`${id}-head`}>{title}</h3>
      {children}
    </section>
  );
}
