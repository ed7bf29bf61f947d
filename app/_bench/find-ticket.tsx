import { TextField } from '@/app/_parts/field';
import styles from './bench.module.css';

interface FindTicketProps {
  ref: React.Ref<HTMLInputElement>;
  question: string;
  onAsk: (question: string) => void;
  onOpenFirst: () => void;
}

/** The line that tickets are found by. */
export function FindTicket({ ref, question, onAsk, onOpenFirst }: FindTicketProps) {
  return (
    <search className={styles.find}>
      <form
        onSubmit={(event) => {
          event.preventDefault();
          onOpenFirst();
        }}
      >
        <TextField
          ref={ref}
          label="Find a ticket"
          hint="By client, instrument, any words or number. Enter opens the first."
          type="search"
          value={question}
          maxLength={500}
          onChange={(event) => onAsk(event.target.value)}
          autoComplete="off"
          spellCheck={false}
        />
      </form>
    </search>
  );
}
