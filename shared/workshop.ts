import { z } from 'zod';
import { currencySchema } from './work';

/** The workshop's own words and ways: on documents, and for prices. */
export const workshopSchema = z.strictObject({
  name: z.string().trim().max(200).default(''),
  /** Lines as they stand on a letter. */
  address: z.string().trim().max(1000).default(''),
  currency: currencySchema.default('EUR'),
});
export type Workshop = z.infer<typeof workshopSchema>;
