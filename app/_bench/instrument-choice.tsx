import { ChoiceField, TextField } from '@/app/_parts/field';
import { instrumentTypes } from '@/shared/instruments';
import { type Booking, type Missing, ownType } from './booking';

interface InstrumentChoiceProps {
  booking: Booking;
  write: (part: Partial<Booking>) => void;
  usedTypes: readonly string[];
  missing: Missing;
}

/** The known types, the workshop's own from earlier tickets, and a line for one more. */
export function InstrumentChoice({ booking, write, usedTypes, missing }: InstrumentChoiceProps) {
  const known: readonly string[] = instrumentTypes;
  const own = [...new Set(usedTypes)]
    .filter((type) => !known.includes(type))
    .sort((a, b) => a.localeCompare(b));
  return (
    <>
      <ChoiceField
        label="Instrument"
        wrong={missing.type ?? null}
        name="type"
        required
        value={booking.type}
        onChange={(event) => write({ type: event.target.value })}
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
          wrong={missing.own ?? null}
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
