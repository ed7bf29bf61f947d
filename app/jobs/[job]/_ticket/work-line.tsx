'use client';

import { useEffect, useState } from 'react';
import { z } from 'zod';
import { KeptField } from '@/app/_parts/kept-field';
import { KeptChoice } from '@/app/_parts/kept-field-choice';
import { sayPrice } from '@/lib/work';
import { type WorkItem, workOutcomes } from '@/shared/work';
import { Fold } from './fold';
import { MomentButton } from './moment-pin';
import styles from './ticket.module.css';
import { useWork } from './use-work';
import { chargeWords, originWords, outcomeWords } from './words';
import { WorkDetails } from './work-details';

const outcomeSchema = z.enum(workOutcomes);
type Outcome = z.infer<typeof outcomeSchema>;

/** A work item: what became of it by one touch, everything else behind “Change”. */
export function WorkLine({ item, currency }: { item: WorkItem; currency: string }) {
  const { patchItem, here } = useWork();
  const asksWhy = item.outcome === 'not done' || item.outcome === 'declined';
  const why = useWhy(item, asksWhy);
  const setOutcome = async (outcome: Outcome, was: Outcome) => {
    const ended = endOf(item, outcome, here());
    await patchItem(item, { outcome, ended }, { outcome: was, ended: item.ended });
    if (outcome === 'not done' || outcome === 'declined') why.ask();
  };
  return (
    <li id={item.id} tabIndex={-1} className={styles.line} data-outcome={item.outcome}>
      <p className={styles.what}>{item.what}</p>
      <p className={styles.facts}>
        <span>{factsOf(item)}</span>
        {item.begun && (
          <span>
            begun <MomentButton moment={item.begun} label={`Go to where it begins: ${item.what}`} />
          </span>
        )}
        {item.ended && (
          <span>
            ended <MomentButton moment={item.ended} label={`Go to where it ends: ${item.what}`} />
          </span>
        )}
      </p>
      {!asksWhy && item.why && <p className={styles.fine}>{item.why}</p>}
      <Fold
        label="Change"
        of={item.what}
        beside={
          <>
            <KeptChoice
              label={`Outcome of: ${item.what}`}
              quiet
              name="outcome"
              schema={outcomeSchema}
              options={workOutcomes}
              words={outcomeWords}
              value={item.outcome}
              onKeep={setOutcome}
            />
            {asksWhy && (
              <KeptField
                id={why.id}
                label={item.outcome === 'declined' ? 'Why it was declined' : 'Why it was not done'}
                name="why"
                value={item.why ?? ''}
                onKeep={(next, was) => patchItem(item, { why: next || null }, { why: was || null })}
                wraps
                maxLength={2000}
              />
            )}
          </>
        }
      >
        <WorkDetails item={item} currency={currency} asksWhy={!asksWhy} />
      </Fold>
    </li>
  );
}

/** Where it ended: where the film stands when it is said what became of it. What is open has no end. */
function endOf({ ended }: WorkItem, outcome: Outcome, here: WorkItem['ended']): WorkItem['ended'] {
  return outcome === 'open' ? null : (ended ?? here);
}

function factsOf({ origin, charge, priceMinor, currency }: WorkItem): string {
  const price = priceMinor !== null && currency !== null ? sayPrice(priceMinor, currency) : null;
  return [originWords[origin], charge && chargeWords[charge], price].filter(Boolean).join(' · ');
}

/** Brings the writing to the line for “why” as soon as it is there, where it still has to be said. */
function useWhy({ id, why }: WorkItem, isThere: boolean) {
  const fieldId = `why-${id}`;
  const [asked, setAsked] = useState(false);
  useEffect(() => {
    if (!asked || !isThere) return;
    setAsked(false);
    if (why === null) document.getElementById(fieldId)?.focus();
  }, [asked, isThere, why, fieldId]);
  return { id: fieldId, ask: () => setAsked(true) };
}
