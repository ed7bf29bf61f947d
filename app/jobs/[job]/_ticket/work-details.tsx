'use client';

import { z } from 'zod';
import { Button } from '@/app/_parts/button';
import { KeptField } from '@/app/_parts/kept-field';
import { KeptChoice } from '@/app/_parts/kept-field-choice';
import { parsePrice, sayPrice } from '@/lib/work';
import { charges, origins, type WorkItem } from '@/shared/work';
import { MomentPin } from './moment-pin';
import styles from './ticket.module.css';
import { useWork } from './use-work';
import { chargeWords, originWords } from './words';

const originSchema = z.enum(origins);
const chargeSchema = z.enum(charges).nullable();

interface WorkDetailsProps {
  item: WorkItem;
  /** Of this price, or of the workshop where there is none yet. */
  currency: string;
  /** Whether the line for “why” stands here. */
  asksWhy: boolean;
}

export function WorkDetails({ item, currency, asksWhy }: WorkDetailsProps) {
  const { patchItem, removeItem } = useWork();
  return (
    <>
      <KeptField
        label="What"
        name="what"
        value={item.what}
        onKeep={(what, was) => patchItem(item, { what }, { what: was })}
        wraps
        required
        maxLength={300}
      />
      <KeptChoice
        label="It was"
        name="origin"
        schema={originSchema}
        options={origins}
        words={originWords}
        value={item.origin}
        onKeep={(origin, was) => patchItem(item, { origin }, { origin: was })}
      />
      <KeptChoice
        label="Charge"
        hint="Touch again to take it off."
        name="charge"
        schema={chargeSchema}
        options={charges}
        words={chargeWords}
        none={null}
        value={item.charge}
        onKeep={(charge, was) => patchItem(item, { charge }, { charge: was })}
      />
      {item.charge !== 'free' && <PriceField item={item} currency={currency} />}
      {asksWhy && (
        <KeptField
          label="Why"
          hint="Such as why the price is reduced."
          name="why"
          value={item.why ?? ''}
          onKeep={(why, was) => patchItem(item, { why: why || null }, { why: was || null })}
          wraps
          maxLength={2000}
        />
      )}
      <MomentPin
        name="begun"
        label="Begun"
        of={item.what}
        value={item.begun}
        onKeep={(begun, was) => patchItem(item, { begun }, { begun: was })}
      />
      <MomentPin
        name="ended"
        label="Ended"
        of={item.what}
        value={item.ended}
        onKeep={(ended, was) => patchItem(item, { ended }, { ended: was })}
      />
      <Button weight="alarm" className={styles.remove} onClick={() => void removeItem(item)}>
        Delete this item
      </Button>
    </>
  );
}

const minorSchema = z.int().nullable();

/** A price as people write it; where nothing was said about the charge, a price means that it is agreed. */
function PriceField({ item, currency }: { item: WorkItem; currency: string }) {
  const { patchItem } = useWork();
  const minorOf = (text: string) => (text === '' ? null : parsePrice(text, currency));
  const inWords = (minor: number | null) => (minor === null ? '' : sayPrice(minor, currency));
  const keep = async (next: string, was: string) => {
    const priceMinor = minorOf(next);
    const agreed = item.charge === null && priceMinor !== null;
    await patchItem(
      item,
      { priceMinor, ...(agreed ? { charge: 'agreed' as const } : {}) },
      { priceMinor: minorOf(was) },
    );
  };
  return (
    <KeptField
      label={`Price in ${currency}`}
      hint="45, 45.50 or 45,50. Nothing is added to it."
      name="priceMinor"
      value={inWords(item.priceMinor)}
      onKeep={keep}
      say={(now) => inWords(minorSchema.parse(now))}
    />
  );
}
