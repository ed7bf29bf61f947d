'use client';

import { useRouter } from 'next/navigation';
import { useDeferredValue, useMemo, useRef, useState } from 'react';
import { Button } from '@/app/_parts/button';
import { TextField } from '@/app/_parts/field';
import { counted } from '@/app/_parts/words';
import { AddClient } from './add-client';
import { Cards } from './cards';
import styles from './clients.module.css';
import { findableText, findCards, type IndexCard } from './find-clients';

/** All clients, and a line to find one among them. */
export function CardIndex({ clients }: { clients: readonly IndexCard[] }) {
  const [adding, setAdding] = useState(false);
  const add = (
    <Button weight="main" onClick={() => setAdding(true)}>
      Write down a client
    </Button>
  );
  return (
    <main className={styles.index}>
      {clients.length === 0 ? (
        <section className={styles.empty}>
          <h1 className={styles.title}>No clients yet.</h1>
          <p>
            A client is written down here, or when a job is booked in. Names and numbers stay in this
            workshop: public texts say “a client”, or what you choose instead.
          </p>
          {add}
        </section>
      ) : (
        <Drawer clients={clients} add={add} />
      )}
      <AddClient open={adding} onClose={() => setAdding(false)} />
    </main>
  );
}

function Drawer({ clients, add }: { clients: readonly IndexCard[]; add: React.ReactNode }) {
  const router = useRouter();
  const findBox = useRef<HTMLInputElement>(null);
  const [question, setQuestion] = useState('');
  const asked = useDeferredValue(question);
  const findable = useMemo(() => clients.map((card) => ({ card, text: findableText(card) })), [clients]);
  const found = useMemo(() => findCards(findable, asked).map(({ card }) => card), [findable, asked]);
  const goToFirst = (event: React.FormEvent) => {
    event.preventDefault();
    const first = findCards(findable, question)[0];
    if (first && question.trim() !== '') router.push(`/clients/${first.card.id}`);
  };
  const showAll = () => {
    setQuestion('');
    findBox.current?.focus();
  };
  return (
    <>
      <div className={styles.head}>
        <h1 className={styles.title}>Clients</h1>
        {add}
        <search className={styles.find}>
          <form onSubmit={goToFirst}>
            <TextField
              ref={findBox}
              label="Find a client"
              hint="By name, number, address or notes. Enter opens the first."
              type="search"
              value={question}
              onChange={(event) => setQuestion(event.target.value)}
              autoComplete="off"
              spellCheck={false}
            />
          </form>
        </search>
        <p className={styles.count} role="status">
          {asked.trim() === ''
            ? counted(clients.length, 'client')
            : `${found.length} of ${counted(clients.length, 'client')}`}
        </p>
      </div>
      {found.length === 0 ? (
        <div className={styles.nothing}>
          <p>No client’s card holds all of these words.</p>
          <Button onClick={showAll}>Show all clients</Button>
        </div>
      ) : (
        <Cards cards={found} />
      )}
    </>
  );
}
