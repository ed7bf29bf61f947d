import { taskEvents } from '../_http/events';
import { route } from '../_http/route';

export const dynamic = 'force-dynamic';

/** Every change of every task, as server-sent events. */
export const GET = route((request) => taskEvents(request, null));
