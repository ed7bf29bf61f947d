import type { PrintedList, PrintedTicket, PrintedWork } from '@/lib/work';
import { Blank } from './facts';
import { Held } from './held';
import styles from './paper.module.css';

const byHand = ['done', 'not done', 'declined'] as const;

export function Work({ list }: { list: PrintedTicket['work'] }) {
  if (list.rows.length + list.more === 0) return null;
  return (
    <section aria-labelledby="work">
      <h3 id="work" className={styles.heading}>
        Work
      </h3>
      <table className={styles.table}>
        <thead>
          <tr>
            <th className={styles.outcome}>Outcome</th>
            <th>What</th>
            <th className={styles.origin}>Origin</th>
            <th className={styles.price}>Price</th>
          </tr>
        </thead>
        <tbody>
          {numbered(list.rows).map(([key, item]) => (
            <tr key={key}>
              <td>
                <Boxes outcome={item.outcome} />
              </td>
              <td>
                <Held of={item.what} />
              </td>
              <td>{item.origin}</td>
              <td className={styles.price}>{item.charge ?? <Blank what="nothing agreed" />}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <More list={list} />
    </section>
  );
}

/** A box for each way it can end; what is on the record already is crossed. */
function Boxes({ outcome }: Pick<PrintedWork, 'outcome'>) {
  return (
    <span className={styles.boxes}>
      {byHand.map((way) => (
        <span key={way} className={styles.choice}>
          <span className={styles.box}>{way === outcome && '×'}</span> {way}
        </span>
      ))}
    </span>
  );
}

export function Parts({ list }: { list: PrintedTicket['parts'] }) {
  if (list.rows.length + list.more === 0) return null;
  return (
    <section aria-labelledby="parts">
      <h3 id="parts" className={styles.heading}>
        Parts
      </h3>
      <table className={styles.table}>
        <thead>
          <tr>
            <th>What</th>
            <th className={styles.deed}>Fitted, removed, reused</th>
            <th className={styles.doubt}>In doubt</th>
          </tr>
        </thead>
        <tbody>
          {numbered(list.rows).map(([key, { what, deed, doubt }]) => (
            <tr key={key}>
              <td>
                <Held of={what} />
              </td>
              <td>
                <Held of={deed} />
              </td>
              <td>{doubt && <Held of={doubt} />}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <More list={list} />
    </section>
  );
}

export function LooseEnds({ list }: { list: PrintedTicket['looseEnds'] }) {
  if (list.rows.length + list.more === 0) return null;
  return (
    <section aria-labelledby="loose">
      <h3 id="loose" className={styles.heading}>
        Loose ends
      </h3>
      <ul>
        {numbered(list.rows).map(([key, sentence]) => (
          <li key={key} className={styles.loose}>
            <span className={styles.box} />
            <Held of={sentence} />
          </li>
        ))}
      </ul>
      <More list={list} />
    </section>
  );
}

export function Cautions({ list }: { list: PrintedTicket['cautions'] }) {
  if (list.length === 0) return null;
  return (
    <section aria-labelledby="care">
      <h3 id="care" className={styles.heading}>
        Take care
      </h3>
      <ul className={styles.cautions}>
        {list.map(({ key, words }) => (
          <li key={key}>
            <strong>{key}:</strong> {words}
          </li>
        ))}
      </ul>
    </section>
  );
}

function More({ list: { rows, more } }: { list: PrintedList<unknown> }) {
  if (more === 0) return null;
  return (
    <p className={styles.more}>
      {rows.length > 0 ? 'and ' : ''}
      {more} more on the job’s page
    </p>
  );
}

/** Rows stand still on paper: their place is their key. */
function numbered<Row>(rows: readonly Row[]): [number, Row][] {
  return rows.map((row, at) => [at, row]);
}
