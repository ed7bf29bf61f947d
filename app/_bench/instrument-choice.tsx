import { ChoiceField, TextField } from '@/app/_parts/field';
import { instrumentTypes } from '@/shared/instruments';
import { ownType } from './booking';
import type { BookingPartProps } from './booking-faults';

interface InstrumentChoiceProps extends BookingPartProps {
  usedTypes: readonly string[];
}

/** The known types, the workshop's own from earlier tickets, and a line for one more. */
export function InstrumentChoice({ booking, write, usedTypes, faults }: InstrumentChoiceProps) {
  const known: readonly string[] = instrumentTypes;
  // A returning instrument may be of a type that no ticket on the page shows.
  const chosen = booking.type === ownType || booking.type === '' ? [] : [booking.type];
  const own = [...new Set([...usedTypes, ...chosen])]
    .filter((type) => !known.includes(type))
    .sort((a, b) => a.localeCompare(b));
  return (
    <>
      <ChoiceField
        label="Instrument"
        wrong={faults.type ?? null}
        name="type"
        required
        value={booking.type}
        onChange={(event) => write({ type: event.target.value, instrumentId: null })}
        onKeyDown={bookOnEnter}
      >
        <option value="" disabled>
          Choose …
        </option>
        {[...known, ...own].map((type) => (
          <option key={type}>{type}</option>
        ))}
        <option value={ownType}>one that is not listed …</option>
      </ChoiceField>
      {booking.type === ownType && (
        <TextField
          label="Kind of instrument"
          hint="It is on the list from the next job on."
          wrong={faults.own ?? null}
          name="own"
          maxLength={60}
          required
          autoComplete="off"
          value={booking.own}
          onChange={(event) => write({ own: event.target.value })}
        />
      )}
    </>
  );
}

/** Enter on a choice that is made books the job in, as it does on any line; some browsers would only open the list. */
function bookOnEnter(event: React.KeyboardEvent<HTMLSelectElement>): void {
  if (event.key !== 'Enter' || event.currentTarget.value === '') return;
  event.preventDefault();
  event.currentTarget.form?.requestSubmit();
}
