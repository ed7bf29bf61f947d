import { ChoiceField } from '@/app/_parts/field';

interface InstrumentChoiceProps {
  instruments: readonly { value: string; count: number }[];
  chosen: string;
}

/** Instrument types with how much there is of each. */
export function InstrumentChoice({ instruments, chosen }: InstrumentChoiceProps) {
  return (
    <ChoiceField key={chosen} label="Instrument type" name="instrument" defaultValue={chosen}>
      <option value="">all of them</option>
      {instruments.map(({ value, count }) => (
        <option key={value} value={value}>
          {value} ({count.toLocaleString('en-GB')})
        </option>
      ))}
    </ChoiceField>
  );
}
