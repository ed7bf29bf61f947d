/** Changes one text. */
export type ScrubText = (text: string) => string;

const kept = /^(?:key|fingerprint|sha256)$|path$/i;
const idField = /(?:^id|_ids?|Ids?)$/;
/** Longest texts that the contracts take when a record is read again; the public words may be longer than a name. */
const longest: Readonly<Record<string, number>> = {
  title: 200,
  description: 200,
  about: 120,
  subject: 60,
  name: 60,
  conductors: 60,
  rows: 24,
  row: 24,
};
const opaqueId = /^[0-9a-z]{20}$/;

/**
 * A value of the record with its texts changed, however deep they lie; places, prints and opaque ids are none.
 * @param field the column or member that holds it
 */
export function withTexts(field: string, value: unknown, scrub: ScrubText): unknown {
  if (kept.test(field)) return value;
  if (typeof value === 'string')
    return idField.test(field) && opaqueId.test(value) ? value : fitting(field, value, scrub(value));
  if (Array.isArray(value)) return value.map((each) => withTexts(field, each, scrub));
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value).map(([name, each]) => [name, withTexts(name, each, scrub)]),
  );
}

/** A text column: JSON as this program writes it is changed inside, anything else as it stands. */
export function withColumnTexts(column: string, text: string, scrub: ScrubText): string {
  if (kept.test(column)) return text;
  const json = asJson(text);
  return json === undefined
    ? String(withTexts(column, text, scrub))
    : JSON.stringify(withTexts(column, json, scrub));
}

function fitting(field: string, before: string, after: string): string {
  const most = longest[field] ?? Number.POSITIVE_INFINITY;
  return after === before || after.length <= most ? after : after.slice(0, most).trimEnd();
}

function asJson(text: string): unknown {
  if (!/^[[{"]/.test(text)) return undefined;
  try {
    const value: unknown = JSON.parse(text);
    return JSON.stringify(value) === text ? value : undefined;
  } catch {
    // Words in quotation marks or brackets: no JSON.
    return undefined;
  }
}
