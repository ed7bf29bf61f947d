import styles from './ticket.module.css';

interface TicketSectionProps {
  /** Addresses lead here by it. */
  id: string;
  title: string;
  children: React.ReactNode;
}

/** A part of the ticket under its own head. */
export function TicketSection({ id, title, children }: TicketSectionProps) {
  return (
    <section id={id} tabIndex={-1} className={styles.section} aria-labelledby={`${id}-head`}>
      <h2 id={`${id}-head`}>{title}</h2>
      {children}
    </section>
  );
}
