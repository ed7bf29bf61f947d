import { DomainError } from '@/shared/problem';

/** A trace that cannot be worked on: an unknown conductor, one named twice, an impossible value. */
export class TraceProblem extends DomainError {
  constructor(title: string, detail: string, extra: Record<string, unknown> = {}) {
    super('invalid', title, detail, extra);
  }
}
