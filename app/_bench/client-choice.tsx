'use client';

import { inWords } from '@/app/_parts/call';
import { ChoiceField, TextField } from '@/app/_parts/field';
import { ProblemNote } from '@/app/_parts/problem-note';
import { type ClientLine, clientLinesSchema } from '@/shared/clients';
import { instrumentsSchema } from '@/shared/jobs';
import type { BookingPartProps } from './booking-faults';
import { ClientBox } from './client-box';
import { useAnswer } from './use-answer';

const none: ClientLine[] = [];

/** A client by name: a known one is chosen from those found, any other name is a new one. */
export function ClientChoice({ booking, write, faults }: BookingPartProps) {
  const { client, clientId } = booking;
  const name = client.trim();
  const isAsked = name !== '' && clientId === null;
  const found = useAnswer(
    isAsked ? `/api/clients?${new URLSearchParams({ find: name })}` : null,
    clientLinesSchema,
  );
  return (
    <>
      <ClientBox
        name={client}
        isKnown={clientId !== null}
        suggestions={isAsked ? (found?.value?.clients ?? none) : none}
        wrong={faults.client ?? (isAsked && found?.problem ? inWords(found.problem).title : null)}
        onWrite={(typed) => write({ client: typed, clientId: null, instrumentId: null })}
        onChoose={(line) => write({ client: line.name, clientId: line.id, instrumentId: null })}
      />
      {isAsked && (
        <TextField
          label="What to call the client in public"
          hint="Left empty, public texts say “a client”."
          wrong={faults.alias ?? null}
          name="alias"
          maxLength={200}
          autoComplete="off"
          value={booking.alias}
          onChange={(event) => write({ alias: event.target.value })}
        />
      )}
      {clientId !== null && (
        <TheirInstrument key={clientId} booking={booking} write={write} faults={faults} />
      )}
    </>
  );
}

/** The instruments that a known client brought before: one that comes back keeps its history. */
function TheirInstrument({ booking: { clientId, instrumentId }, write }: BookingPartProps) {
  const answer = useAnswer(
    clientId && `/api/instruments?${new URLSearchParams({ client: clientId })}`,
    instrumentsSchema,
  );
  const instruments = answer?.value?.instruments ?? [];
  if (answer?.problem) return <ProblemNote error={answer.problem} />;
  if (instruments.length === 0) return null;
  const choose = (id: string) => {
    const chosen = instruments.find((instrument) => instrument.id === id);
    write(chosen ? { instrumentId: chosen.id, type: chosen.type } : { instrumentId: null });
  };
  return (
    <ChoiceField
      label="One that was here before?"
      hint="Then its earlier jobs and what is known about it come along."
      name="instrument"
      value={instrumentId ?? ''}
      onChange={(event) => choose(event.target.value)}
    >
      <option value="">no, another instrument</option>
      {instruments.map(({ id, type, maker, model, serial }) => (
        <option key={id} value={id}>
          {[type, maker, model, serial && `serial ${serial}`].filter(Boolean).join(', ')}
        </option>
      ))}
    </ChoiceField>
  );
}
