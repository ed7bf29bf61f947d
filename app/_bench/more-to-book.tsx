import { TextField } from '@/app/_parts/field';
import { usualThings } from './booking';
import styles from './booking.module.css';
import type { BookingPartProps } from './booking-faults';
import { ClientChoice } from './client-choice';
import { LinesField } from './lines-field';

/** All that may be left empty when a job is booked in. */
export function MoreToBook({ booking, write, faults }: BookingPartProps) {
  return (
    <div className={styles.moreFields}>
      <ClientChoice booking={booking} write={write} faults={faults} />
      <TextField
        label="Promised for"
        wrong={faults.promisedOn ?? null}
        type="date"
        name="promisedOn"
        value={booking.promisedOn}
        onChange={(event) => write({ promisedOn: event.target.value })}
      />
      <LinesField
        label="What was asked"
        hint="One thing a line. Each goes on the ticket as asked."
        wrong={faults.asked ?? null}
        name="asked"
        rows={3}
        maxLength={6000}
        value={booking.asked}
        onChange={(event) => write({ asked: event.target.value })}
      />
      <CameWith booking={booking} write={write} faults={faults} />
      <TextField
        label="Where it stands"
        hint="Such as “rack by the door, second hook”."
        wrong={faults.place ?? null}
        name="place"
        maxLength={200}
        autoComplete="off"
        value={booking.place}
        onChange={(event) => write({ place: event.target.value })}
      />
    </div>
  );
}

function CameWith({ booking: { cameWith, otherThings }, write, faults }: BookingPartProps) {
  const tick = (thing: string, isTicked: boolean) =>
    write({
      cameWith: usualThings.filter((usual) => (usual === thing ? isTicked : cameWith.includes(usual))),
    });
  return (
    <fieldset className={styles.cameWith}>
      <legend>Came with</legend>
      <div className={styles.ticks}>
        {usualThings.map((thing) => (
          <label key={thing} className={styles.tick}>
            <input
              type="checkbox"
              checked={cameWith.includes(thing)}
              onChange={(event) => tick(thing, event.target.checked)}
            />
            {thing}
          </label>
        ))}
      </div>
      <TextField
        label="Anything else"
        hint="In your own words, with commas between."
        wrong={faults.otherThings ?? null}
        name="otherThings"
        maxLength={1000}
        autoComplete="off"
        value={otherThings}
        onChange={(event) => write({ otherThings: event.target.value })}
      />
    </fieldset>
  );
}
