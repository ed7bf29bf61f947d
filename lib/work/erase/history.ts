import type { Scrubber } from './scrub';
import { withTexts } from './values';
import { fieldWhose, type Whose } from './whose';

type Row = Readonly<Record<string, unknown>>;

/** One row as it was before and after a change. */
export interface Image {
  table: string;
  id: string;
  before: Record<string, unknown> | null;
  after: Record<string, unknown> | null;
}

interface Erasing {
  /** The entries of the person, those that went into it before too. */
  clientIds: ReadonlySet<string>;
  scrubber: Scrubber;
  whose: Whose;
}

/**
 * What a change remembers, without the person: images of their own entry go, the others no longer name them. The
 * same words are put in as in the rows themselves, so that what else was changed can still be taken back.
 * @returns nothing where nothing is left of the change
 */
export function imagesWithout(images: readonly Image[], erasing: Erasing): Image[] {
  return images
    .filter(({ table, id }) => table !== 'clients' || !erasing.clientIds.has(id))
    .map((image) => ({
      ...image,
      before: rowWithout(image.table, image.before, erasing),
      after: rowWithout(image.table, image.after, erasing),
    }))
    .filter(({ before, after }) => JSON.stringify(before) !== JSON.stringify(after));
}

/** What was done, in words, is about the rows that it was done to. */
export function labelWhose(jobId: string | null, images: readonly Image[], whose: Whose): ReturnType<Whose> {
  const all = [
    whose('jobs', { id: jobId }),
    ...images.flatMap(({ table, before, after }) =>
      [before, after].flatMap((row) => (row ? [whose(table, row)] : [])),
    ),
  ];
  return (['own', 'leave'] as const).find((each) => all.includes(each)) ?? 'elsewhere';
}

function rowWithout(table: string, row: Row | null, erasing: Erasing): Record<string, unknown> | null {
  if (row === null) return null;
  const { clientId } = row;
  const named = Object.entries(row).map(([field, value]) => [
    field,
    valueWithout(table, row, field, value, erasing),
  ]);
  const without = Object.fromEntries(named);
  return typeof clientId === 'string' && erasing.clientIds.has(clientId)
    ? { ...without, clientId: null }
    : without;
}

function valueWithout(table: string, row: Row, field: string, value: unknown, erasing: Erasing): unknown {
  const where = fieldWhose(erasing.whose(table, row), table, field);
  if (where === 'leave') return value;
  return withTexts(field, value, (text) => erasing.scrubber.scrub(text, where));
}
