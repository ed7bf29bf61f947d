import { supervisor } from '@/lib/tasks/store';
import type { Task } from '@/shared/tasks';

const ended: ReadonlySet<Task['state']> = new Set(['done', 'failed', 'cancelled']);
/** A line now and then tells both ends that the other is still there. */
const heartbeatMs = 20_000;

/**
 * Server-sent events of tasks (WHATWG HTML, section 9.2): `event: task`, data the task as JSON.
 * @param only one task: its state at once, then each change, and the end when it has ended
 */
export function taskEvents(request: Request, only: Task | null): Response {
  const encoder = new TextEncoder();
  let release = () => undefined as undefined;
  const stream = new ReadableStream<Uint8Array>({
    start(controller) {
      const onTask = (task: Task) => {
        if (only && task.id !== only.id) return;
        controller.enqueue(encoder.encode(`event: task\ndata: ${JSON.stringify(task)}\n\n`));
        if (only && ended.has(task.state)) {
          release();
          controller.close();
        }
      };
      const beat = setInterval(() => controller.enqueue(encoder.encode(': still here\n\n')), heartbeatMs);
      release = () => {
        clearInterval(beat);
        supervisor().off('task', onTask);
        return undefined;
      };
      supervisor().on('task', onTask);
      request.signal.addEventListener('abort', release);
      controller.enqueue(encoder.encode('retry: 2000\n\n'));
      if (only) onTask(only);
    },
    cancel: () => release(),
  });
  return new Response(stream, {
    headers: { 'content-type': 'text/event-stream', 'cache-control': 'no-store' },
  });
}
