import { mediaRunners } from '@/lib/media/engine';
import { DomainError } from '@/shared/problem';
import { type Order, orderSchema, type Report, type WorkProblem } from './protocol';

/**
 * The process in which recordings are decoded: a damaged file may take a decoder down, and this process with
 * it, but never the server. It does one piece of work at a time, and ends when the server does.
 */
let current: { id: number; off: AbortController } | null = null;

process.on('message', (message) => {
  const order = orderSchema.parse(message);
  if (order.type === 'run') void run(order);
  else if (current?.id === order.id) current.off.abort();
});
process.on('disconnect', () => process.exit(0));
// Ctrl+C in the terminal reaches every process; the server says when this one ends.
process.on('SIGINT', () => undefined);
tell({ type: 'ready' });

async function run({ id, kind, payload }: Extract<Order, { type: 'run' }>): Promise<void> {
  const off = new AbortController();
  current = { id, off };
  const report = (progress: number, partial?: unknown) =>
    tell({ type: 'progress', id, progress, residentBytes: process.memoryUsage.rss(), partial });
  try {
    report(0);
    tell({ type: 'done', id, result: await mediaRunners[kind](payload, { signal: off.signal, report }) });
  } catch (error) {
    tell(off.signal.aborted ? { type: 'cancelled', id } : { type: 'failed', id, problem: inWords(error) });
  } finally {
    current = null;
  }
}

function inWords(error: unknown): WorkProblem {
  if (error instanceof DomainError) return { kind: error.kind, title: error.message, detail: error.detail };
  if (error instanceof Error && 'code' in error && error.code === 'ENOSPC') {
    return {
      kind: 'unavailable',
      title: 'The disk is full.',
      detail: 'Make room on the disk of the data folder, then look again.',
    };
  }
  console.error(error);
  const why = error instanceof Error ? error.message : String(error);
  return { kind: 'unavailable', title: 'The work could not be finished.', detail: why };
}

function tell(report: Report): void {
  // The channel may close between two reports when the server ends.
  if (process.connected) process.send?.(report);
}
