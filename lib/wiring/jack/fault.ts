import type { JackFaultKind } from '@/shared/jack';
import type { Edit } from './predict';

/** One thing wrong with the harness. `key` is unique in it. */
export type Fault = { key: string; kind: JackFaultKind; title: string; edit: Edit };

/** @param which tells faults of one kind on one part apart */
export function fault(kind: JackFaultKind, about: string, title: string, edit: Edit, which = ''): Fault {
  return { key: [kind, about, which].filter(Boolean).join('/'), kind, title, edit };
}
