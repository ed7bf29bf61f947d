import { z } from 'zod';
import { type TakeId, takeIdSchema } from './ids';
import { takeMsSchema } from './markers';

/** A point on the film: it belongs to its take, so re-ordering takes never moves it off its picture. */
export const momentSchema = z.strictObject({ takeId: takeIdSchema, ms: takeMsSchema });
export type FilmMoment = z.infer<typeof momentSchema>;

/** Where something of the record lies on the film; null where it was not pinned. */
export function momentOf({ takeId, ms }: { takeId: TakeId | null; ms: number | null }): FilmMoment | null {
  return takeId !== null && ms !== null ? { takeId, ms } : null;
}
