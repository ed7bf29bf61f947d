import type { IncomingMessage } from 'node:http';
import { hostname, networkInterfaces } from 'node:os';
import type { Problem } from '@/shared/problem';
import { problem } from './problem';

const loopback = ['localhost', '127.0.0.1', '[::1]'];

/** Names by which this server may be called. On loopback, loopback only: a rebound name is refused. */
export function namesOf(host: string): Set<string> {
  const names = new Set(loopback);
  if (loopback.includes(host) || host === '::1') return names;
  if (host !== '0.0.0.0' && host !== '::')
    return names.add(host.includes(':') ? `[${host}]` : host.toLowerCase());
  names.add(hostname().toLowerCase()).add(`${hostname().toLowerCase()}.local`);
  for (const address of Object.values(networkInterfaces()).flat()) {
    if (address) names.add(address.family === 'IPv6' ? `[${address.address}]` : address.address);
  }
  return names;
}

/**
 * Who may call: the request must name this server, and come from its own pages or from no page at all.
 * @returns the problem to answer with, or null
 */
export function refusal(request: IncomingMessage, names: ReadonlySet<string>): Problem | null {
  const host = request.headers.host?.toLowerCase() ?? '';
  if (!names.has(host.replace(/:\d+$/, ''))) {
    return problem(
      421,
      'This server does not go by that name.',
      'Open it by the address that it printed when it started.',
    );
  }
  const { origin } = request.headers;
  if (origin !== undefined && origin.toLowerCase() !== `http://${host}`) return foreign;
  const site = request.headers['sec-fetch-site'];
  const visiting = request.method === 'GET' && request.headers['sec-fetch-mode'] === 'navigate';
  if (typeof site === 'string' && site !== 'same-origin' && site !== 'none' && !visiting) return foreign;
  return null;
}

const foreign = problem(
  403,
  'Another page tried to use Benchtake.',
  'Open Benchtake’s own page and do it there.',
);
