'use client';

import { useState } from 'react';
import { call } from '@/app/_parts/call';
import { KeptField } from '@/app/_parts/kept-field';
import { useNotices } from '@/app/_parts/notices';
import { minorDigits } from '@/lib/work';
import { type Workshop, workshopSchema } from '@/shared/workshop';
import settings from '../settings.module.css';
import styles from './workshop.module.css';

/** The workshop's name and address for documents, and the currency of its prices. */
export function WorkshopSheet({ first }: { first: Workshop }) {
  const { done, wrong } = useNotices();
  const [workshop, setWorkshop] = useState(first);
  const keep = async (part: Partial<Workshop>, told: string, undo?: Partial<Workshop>) => {
    // Another window may have kept another line meanwhile.
    const now = await call('GET', '/api/workshop', workshopSchema);
    setWorkshop(await call('PUT', '/api/workshop', workshopSchema, { ...now, ...part }));
    done(told, undo && (() => void keep(undo, 'Put back').catch(wrong)));
  };
  return (
    <section className={settings.sheet} aria-labelledby="workshop">
      <h2 id="workshop">Workshop</h2>
      <p>For the head of what you print, and for prices. Leave empty what should not stand there.</p>
      <div className={styles.fields}>
        <KeptField
          label="Name of the workshop"
          name="name"
          value={workshop.name}
          onKeep={(name, was) => keep({ name }, 'Name kept', { name: was })}
          maxLength={200}
        />
        <KeptField
          label="Address"
          hint="Lines as they stand on a letter."
          name="address"
          value={workshop.address}
          onKeep={(address, was) => keep({ address }, 'Address kept', { address: was })}
          rows={4}
          maxLength={1000}
        />
        <KeptField
          label="Currency"
          hint={`Its three letters, such as EUR (ISO 4217). Now: ${sayCurrency(workshop.currency)}.`}
          name="currency"
          value={workshop.currency}
          onKeep={(currency, was) =>
            keep({ currency: currency.toUpperCase() }, 'Currency kept', { currency: was })
          }
          required
          maxLength={3}
        />
        <p className={settings.soft}>
          Prices that are on a ticket already stay in the currency in which they were agreed.
        </p>
      </div>
    </section>
  );
}

/** "Euro, prices with 2 digits behind the point". */
function sayCurrency(code: string): string {
  const name = new Intl.DisplayNames('en-GB', { type: 'currency' }).of(code) ?? code;
  const digits = minorDigits(code);
  if (digits === 0) return `${name}, whole prices`;
  return `${name}, prices with ${digits} digits behind the point`;
}
