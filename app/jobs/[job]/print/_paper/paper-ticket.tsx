import { ticketNumber } from '@/app/_parts/words';
import { dayInWords, dayOf, type Paper, type PrintedTicket } from '@/lib/work';
import type { Job } from '@/shared/jobs';
import { Code } from './code';
import { ClientFacts, Days, InstrumentFacts } from './facts';
import { Held } from './held';
import { Cautions, LooseEnds, Parts, Work } from './lists';
import styles from './paper.module.css';

interface Props {
  job: Job;
  ticket: PrintedTicket;
  paper: Paper;
  address: { job: string; otherDevices: boolean };
  printedAt: number;
}

/** One sheet of paper, drawn with the measures it was planned by (lib/work/print-paper.ts). */
export function PaperTicket({ job, ticket, paper, address, printedAt }: Props) {
  return (
    <article
      className={styles.sheet}
      data-paper={paper}
      aria-label={`Ticket ${ticketNumber(job.number)} on paper`}
    >
      <header className={styles.head}>
        <div className={styles.name}>
          <p className={styles.private}>For the workshop only{ticket.client && ': it names the client'}</p>
          <p className={styles.number}>
            <span className={styles.numero}>No.</span> {ticketNumber(job.number)}
          </p>
          <h2 className={styles.title}>
            <Held of={ticket.title} />
          </h2>
        </div>
        <div className={styles.code}>
          <Code address={address.job} className={styles.qr} />
          <p className={styles.caption}>
            {address.otherDevices
              ? 'Opens the job'
              : 'Opens the job on the bench machine; a phone can once HOST is set'}
          </p>
        </div>
      </header>
      <Days of={ticket.days} />
      <div className={styles.facts}>
        <ClientFacts client={ticket.client} cameWith={ticket.cameWith} />
        <InstrumentFacts instrument={ticket.instrument} />
      </div>
      <Work list={ticket.work} />
      <Parts list={ticket.parts} />
      <LooseEnds list={ticket.looseEnds} />
      <Cautions list={ticket.cautions} />
      <section className={styles.notes} aria-labelledby="notes">
        <h3 id="notes" className={styles.heading}>
          Notes
          <small className={styles.stamp}>Printed {dayInWords(dayOf(printedAt))}</small>
        </h3>
        <div className={styles.ruled} aria-hidden="true">
          {ruledLines.map((line) => (
            <hr key={line} />
          ))}
        </div>
      </section>
    </article>
  );
}

/** More than fit on any paper: what is left of the page takes as many as it holds. */
const ruledLines = Array.from({ length: 30 }, (_, at) => at);
