import { z } from 'zod';

/** A day of the calendar that exists: 2026-02-29 does not (ISO 8601). */
export const daySchema = z.iso
  .date('a day of the calendar, such as 2026-11-25')
  .refine((day) => day >= '1900-01-01' && day < '2200-01-01', 'a day between 1900 and 2199');
