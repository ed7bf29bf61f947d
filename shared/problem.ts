import { z } from 'zod';

/** What went wrong, in the terms of the trade; the HTTP edge turns it into a status code. */
export type ProblemKind =
  | 'invalid'
  | 'not-found'
  | 'conflict'
  | 'gone'
  | 'forbidden'
  | 'unavailable'
  | 'too-large';

/**
 * An error that a person can meet. `message` says what happened, `detail` what to do next.
 * Rules throw these; they never know of HTTP.
 */
export class DomainError extends Error {
  readonly kind: ProblemKind;
  readonly detail: string;
  /** Machine-readable extras, for example the field and the value it got. */
  readonly extra: Readonly<Record<string, unknown>>;

  constructor(kind: ProblemKind, title: string, detail: string, extra: Record<string, unknown> = {}) {
    super(title);
    this.name = new.target.name;
    this.kind = kind;
    this.detail = detail;
    this.extra = extra;
  }
}

/** RFC 9457, section 3: the members of a problem details object. */
export const problemSchema = z.looseObject({
  type: z.string().default('about:blank'),
  title: z.string(),
  status: z.int().min(400).max(599),
  detail: z.string(),
  instance: z.string().optional(),
});
export type Problem = z.infer<typeof problemSchema>;
