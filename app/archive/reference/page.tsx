import type { Metadata } from 'next';
import Form from 'next/form';
import Link from 'next/link';
import { Button, ButtonLink } from '@/app/_parts/button';
import { TextField } from '@/app/_parts/field';
import { counted } from '@/app/_parts/words';
import { database } from '@/db/open';
import { pickupsAnswer } from '@/lib/archive/store';
import { type PickupsQuery, pickupsQuerySchema } from '@/shared/reference';
import { addressWith, askedOf, type SearchParams } from './_reference/asked';
import { AskedColours } from './_reference/asked-colours';
import { EarlierCables } from './_reference/earlier-cables';
import { InstrumentChoice } from './_reference/instrument-choice';
import { PickupCard } from './_reference/pickup-card';
import styles from './_reference/reference.module.css';
import { ReferencePage } from './_reference/reference-page';
import { TakeAway } from './_reference/take-away';

export const dynamic = 'force-dynamic';
export const metadata: Metadata = { title: 'Pickups traced' };

const here = '/archive/reference';

export default async function PickupsPage({ searchParams }: { searchParams: SearchParams }) {
  const query = await askedOf(searchParams, pickupsQuerySchema);
  const { colours, instrument } = query;
  const answer = pickupsAnswer(database(), { ...query, limit: 25 });
  const { asked, same, pickups, count, page, pages } = answer;
  if (answer.instruments.length === 0) return <NothingTraced />;
  return (
    <ReferencePage here={here}>
      <Ask query={query} instruments={answer.instruments} />
      {asked && <AskedColours asked={asked} />}
      {same && asked && asked.conductors.length > 0 && <EarlierCables same={same} />}
      <section className={styles.list} aria-labelledby="pickups">
        <h2 id="pickups" className={styles.head}>
          {asked ? `${counted(count, 'cable')} like it` : counted(count, 'pickup traced', 'pickups traced')}
        </h2>
        <ul className={styles.cards}>
          {pickups.map((pickup) => (
            <PickupCard key={pickup.trace} pickup={pickup} />
          ))}
        </ul>
        <Leaves
          page={page}
          pages={pages}
          address={(to) => addressWith(here, { colours, instrument, page: to })}
        />
        {count > 0 && <TakeAway route="/api/archive/reference/pickups" parts={{ colours, instrument }} />}
      </section>
    </ReferencePage>
  );
}

interface AskProps {
  query: PickupsQuery;
  instruments: React.ComponentProps<typeof InstrumentChoice>['instruments'];
}

function Ask({ query: { colours, instrument }, instruments }: AskProps) {
  return (
    <search>
      <Form action={here} className={styles.ask}>
        <TextField
          key={colours}
          name="colours"
          label="Colours in the hand"
          hint="Any order: red white green black bare; RD WH GN BK; r w g b; white/red for a striped one."
          defaultValue={colours}
          maxLength={300}
          autoComplete="off"
          spellCheck={false}
        />
        <InstrumentChoice instruments={instruments} chosen={instrument} />
        <p className={styles.buttons}>
          <Button type="submit" weight="main">
            Look
          </Button>
          {(colours !== '' || instrument !== '') && <ButtonLink href={here}>Show all</ButtonLink>}
        </p>
      </Form>
    </search>
  );
}

interface LeavesProps {
  page: number;
  pages: number;
  address: (page: number) => string;
}

function Leaves({ page, pages, address }: LeavesProps) {
  if (pages === 1) return null;
  return (
    <nav className={styles.leaves} aria-label="Pages of the table">
      {page > 1 && <ButtonLink href={address(page - 1)}>Newer</ButtonLink>}
      <span>
        Page {page} of {pages}
      </span>
      {page < pages && <ButtonLink href={address(page + 1)}>Older</ButtonLink>}
    </nav>
  );
}

function NothingTraced() {
  return (
    <ReferencePage here={here}>
      <section className={styles.empty}>
        <h2 className={styles.head}>No pickup has been traced yet.</h2>
        <p>
          Each trace of a job comes to stand here with its colours, coils and readings, so that the next cable
          without a label can be held against all earlier ones.
        </p>
        <p>
          A trace is begun on the page of a <Link href="/">job on the bench</Link>.
        </p>
      </section>
    </ReferencePage>
  );
}
