'use client';

import { useState } from 'react';
import { Button } from '@/app/_parts/button';
import type { RackGroup, RackGroupName } from '@/lib/work';
import type { HungTicket } from './find-tickets';
import styles from './rack.module.css';
import { TicketOnRail } from './ticket-on-rail';

const headings: Record<RackGroupName, string> = {
  bench: 'On the bench',
  due: 'Due',
  ready: 'Ready to be collected',
  gone: 'Collected',
};

interface RackGroupsProps {
  groups: readonly RackGroup<HungTicket>[];
  today: string;
  isFinding: boolean;
  /** How many tickets follow on those shown. */
  more: number;
  onMore: () => void;
}

/** One rail for each group. Those gone are folded away until they are wanted or looked for. */
export function RackGroups({ groups, today, isFinding, more, onMore }: RackGroupsProps) {
  const [goneWanted, setGoneWanted] = useState(false);
  const isGoneShown = goneWanted || isFinding;
  const last = groups.at(-1)?.name;
  return (
    <>
      {groups.map((group) => {
        const isShown = group.name !== 'gone' || isGoneShown;
        return (
          <section key={group.name} className={styles.group} aria-labelledby={`rack-${group.name}`}>
            <h2 id={`rack-${group.name}`} className={styles.heading}>
              {group.name === 'gone' && !isFinding ? (
                <button
                  type="button"
                  className={styles.fold}
                  aria-expanded={isShown}
                  onClick={() => setGoneWanted(!goneWanted)}
                >
                  <GroupWords group={group} more={group.name === last ? more : 0} />
                </button>
              ) : (
                <GroupWords group={group} more={group.name === last ? more : 0} />
              )}
            </h2>
            {isShown && (
              <ul className={styles.rack}>
                {group.tickets.map((ticket) => (
                  <TicketOnRail key={ticket.id} ticket={ticket} today={today} />
                ))}
              </ul>
            )}
          </section>
        );
      })}
      {more > 0 && (last !== 'gone' || isGoneShown) && (
        <Button className={styles.more} onClick={onMore}>
          Show more ({more.toLocaleString('en-GB')} to come)
        </Button>
      )}
    </>
  );
}

/** @param more tickets that follow on the last group: where those gone are shown last, all of them have gone too */
function GroupWords({
  group: { name, tickets, overdue },
  more,
}: {
  group: RackGroup<HungTicket>;
  more: number;
}) {
  const known = name === 'gone' ? tickets.length + more : tickets.length;
  const count = `${known.toLocaleString('en-GB')}${more > 0 && name !== 'gone' ? ' and more' : ''}`;
  return (
    <>
      {headings[name]} <span className={styles.howMany}>({count})</span>
      {overdue > 0 && <span className={styles.overdue}> {overdue} overdue</span>}
    </>
  );
}
