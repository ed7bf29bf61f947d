import type { PrintedText, PrintedTicket } from '@/lib/work';
import { Held } from './held';
import styles from './paper.module.css';

export function Days({ of: { received, promised, collected, place } }: { of: PrintedTicket['days'] }) {
  return (
    <dl className={styles.days}>
      <Day label="Received">{received}</Day>
      <Day label="Promised">{promised}</Day>
      <Day label="Collected">{collected}</Day>
      <Day label="Stands at">{place && <Held of={place} />}</Day>
    </dl>
  );
}

function Day({ label, children }: { label: string; children: React.ReactNode }) {
  return (
    <div>
      <dt className={styles.label}>{label}</dt>
      <dd className={styles.day}>{children ?? <Blank what="not known yet" />}</dd>
    </div>
  );
}

/** A place to write by hand. */
export function Blank({ what }: { what: string }) {
  return (
    <span className={styles.blank}>
      <span className="only-read">{what}</span>
    </span>
  );
}

type Client = Pick<PrintedTicket, 'client' | 'cameWith'>;

export function ClientFacts({ client, cameWith }: Client) {
  return (
    <section aria-labelledby="client">
      <h3 id="client" className={styles.heading}>
        Client
      </h3>
      {client ? <Held of={client.name} strong /> : <p>No client named</p>}
      {client?.reach && <Held of={client.reach} />}
      <p className={styles.label}>Came with</p>
      {cameWith ? <Held of={cameWith} /> : <p>nothing noted</p>}
    </section>
  );
}

export function InstrumentFacts({ instrument }: Pick<PrintedTicket, 'instrument'>) {
  const { type, maker, model, serial, features } = instrument;
  return (
    <section aria-labelledby="instrument">
      <h3 id="instrument" className={styles.heading}>
        Instrument
      </h3>
      <Held of={type} strong />
      <dl className={styles.known}>
        <Known label="Maker" of={maker} />
        <Known label="Model" of={model} />
        <Known label="Serial" of={serial} />
      </dl>
      {features && <Held of={features} />}
    </section>
  );
}

function Known({ label, of }: { label: string; of: PrintedText }) {
  return (
    <div className={styles.pair}>
      <dt className={styles.label}>{label}</dt>
      <dd>
        <Held of={of} />
      </dd>
    </div>
  );
}
