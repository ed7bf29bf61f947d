import { z } from 'zod';
import { takeIdSchema } from './ids';
import { takeMsSchema } from './markers';

/** A point on the film: it belongs to its take, so re-ordering takes never moves it off its picture. */
export const momentSchema = z.strictObject({ takeId: takeIdSchema, ms: takeMsSchema });
export type FilmMoment = z.infer<typeof momentSchema>;
