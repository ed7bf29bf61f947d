'use client';

import { useMemo } from 'react';
import { z } from 'zod';
import type { Moment } from '@/lib/film';
import { changeIdSchema, type ReadingId } from '@/shared/ids';
import { type Basis, type NewReading, type Reading, readingSchema } from '@/shared/readings';
import { useDesk } from './use-record';

const answerSchema = z.object({ change: changeIdSchema, reading: readingSchema });
const goneSchema = z.object({ change: changeIdSchema });

/** What can be done to readings, each step with its way back. */
export function useReadingChanges() {
  const { record, change } = useDesk();
  return useMemo(
    () => ({
      note: async (reading: NewReading) =>
        (await change('POST', `/api/jobs/${record.job.id}/readings`, reading, answerSchema))?.reading ?? null,
      moveTo: (id: ReadingId, moment: Moment) =>
        change(
          'PATCH',
          `/api/readings/${id}`,
          { takeId: moment.takeId, ms: moment.ms },
          answerSchema,
          'Reading moved',
        ),
      setBasis: (id: ReadingId, basis: Basis) =>
        change('PATCH', `/api/readings/${id}`, { basis }, answerSchema),
      remove: (reading: Reading) =>
        change('DELETE', `/api/readings/${reading.id}`, undefined, goneSchema, 'Reading deleted'),
    }),
    [record, change],
  );
}
