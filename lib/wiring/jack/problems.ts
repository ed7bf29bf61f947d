import { DomainError } from '@/shared/problem';

/** A harness or a reading at its jack that cannot be worked on. */
export class HarnessProblem extends DomainError {
  constructor(title: string, detail: string, extra: Record<string, unknown> = {}) {
    super('invalid', title, detail, extra);
  }
}
