import type { Metadata } from 'next';
import Form from 'next/form';
import { Button, ButtonLink } from '@/app/_parts/button';
import { ChoiceField, TextField } from '@/app/_parts/field';
import { database } from '@/db/open';
import { readingsAnswer } from '@/lib/archive/store';
import { type ReadingsAnswer, type ReadingsQuery, readingsQuerySchema } from '@/shared/reference';
import { addressWith, askedOf, type SearchParams } from '../_reference/asked';
import { InstrumentChoice } from '../_reference/instrument-choice';
import styles from '../_reference/reference.module.css';
import { ReferencePage } from '../_reference/reference-page';
import { TakeAway } from '../_reference/take-away';
import { ChosenPlace } from './_readings/chosen-place';
import { Plots } from './_readings/plots';
import { SpreadTable } from './_readings/spread-table';

export const dynamic = 'force-dynamic';
export const metadata: Metadata = { title: 'Readings' };

const here = '/archive/reference/readings';

export default async function ReadingsPage({ searchParams }: { searchParams: SearchParams }) {
  const query = await askedOf(searchParams, readingsQuerySchema);
  const answer = readingsAnswer(database(), { ...query, limit: 100 });
  const { kind, groups, standing, unclear, chosen, left } = answer;
  if (kind === null || (answer.kinds.length === 0 && !standing)) return <NothingRead unclear={unclear} />;
  const parts = { kind, instrument: query.instrument };
  return (
    <ReferencePage here={here}>
      <Ask query={query} answer={answer} />
      {unclear !== null && (
        <p className={styles.wrong} role="alert">
          {unclear}
        </p>
      )}
      {standing && (
        <p className={styles.standing} role="status">
          <strong>{standing.said}</strong> {standing.is.sentence}
        </p>
      )}
      <Plots answer={answer} />
      <SpreadTable
        kind={kind}
        groups={groups}
        chosen={chosen?.place ?? ''}
        address={(place, instrument) => addressWith(here, { kind, instrument, place })}
      />
      {left > 0 && <p>{left.toLocaleString('en-GB')} more groups have still fewer readings.</p>}
      {chosen && <ChosenPlace chosen={chosen} />}
      <TakeAway route="/api/archive/reference/readings" parts={parts} />
    </ReferencePage>
  );
}

function Ask({ query, answer }: { query: ReadingsQuery; answer: ReadingsAnswer }) {
  const { kinds, instruments, kind } = answer;
  return (
    <search>
      <Form action={here} className={styles.ask}>
        <ChoiceField key={kind} label="Kind of reading" name="kind" defaultValue={kind ?? ''}>
          {kinds.map((each) => (
            <option key={each.kind} value={each.kind}>
              {each.label} ({each.count.toLocaleString('en-GB')})
            </option>
          ))}
        </ChoiceField>
        <InstrumentChoice instruments={instruments} chosen={query.instrument} />
        <TextField
          key={query.reading}
          name="reading"
          label="A new reading"
          hint="To see it among all earlier ones: neck 7.2k, low E 12th 1.8 mm."
          defaultValue={query.reading}
          maxLength={300}
          autoComplete="off"
          spellCheck={false}
        />
        <p className={styles.buttons}>
          <Button type="submit" weight="main">
            Look
          </Button>
          {(query.reading !== '' || query.place !== '') && (
            <ButtonLink href={addressWith(here, { kind, instrument: query.instrument })}>Show all</ButtonLink>
          )}
        </p>
      </Form>
    </search>
  );
}

function NothingRead({ unclear }: { unclear: string | null }) {
  return (
    <ReferencePage here={here}>
      <section className={styles.empty}>
        <h2 className={styles.head}>No reading has been noted yet.</h2>
        {unclear !== null && <p className={styles.wrong}>{unclear}</p>}
        <p>
          Readings of all jobs come together here by kind, instrument type and place, so that the next one can
          be seen among them.
        </p>
      </section>
    </ReferencePage>
  );
}
