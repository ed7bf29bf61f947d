import { readFileSync } from 'node:fs';
import { createServer, type IncomingMessage, type ServerResponse } from 'node:http';
import { homedir } from 'node:os';
import { join, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import next from 'next';
import { engineFileAt, serveEngineFile } from '@/app/_server/engine-files';
import { serveFilm } from '@/app/_server/film';
import { namesOf, refusal } from '@/app/_server/guard';
import { contentSecurityPolicy, newNonce, plainHeaders } from '@/app/_server/headers';
import { asProblem, problemType } from '@/app/_server/problem';
import { uploadsIn } from '@/app/_server/uploads';
import { closeDatabase, openDatabase } from '@/db/open';
import { backlogWork, keepArchiveAtLeisure } from '@/lib/archive/store';
import { cutResults, pathOfCut } from '@/lib/handover/store';
import { filmPathOf, taskResults } from '@/lib/media/store';
import { listenResults } from '@/lib/narration/store';
import { startTasks } from '@/lib/tasks/store';
import { clearOldBin, forgetOldTickets, keepTicketsAtLeisure } from '@/lib/work/store';
import { madeCutIdSchema, takeIdSchema } from '@/shared/ids';
import { uploadsPath } from '@/shared/uploads';

const dev = process.argv.includes('--dev');
const root = resolve(fileURLToPath(new URL('.', import.meta.url)), '..');
const home = resolve(process.env.BENCHTAKE_HOME ?? join(homedir(), 'Benchtake'));
// Everything that comes with the program is found from its own folder, wherever it was started.
process.chdir(root);
const port = Number(process.env.PORT ?? 4680);
const host = process.env.HOST ?? '127.0.0.1';
// Next reads it at start; nothing is ever sent from here.
process.env.NEXT_TELEMETRY_DISABLED = '1';
process.env.BENCHTAKE_HOME = home;

const db = openDatabase(home, join('db', 'migrations'));
clearOldBin(db, Date.now());
const build = dev ? String(Date.now()) : readFileSync(join('dist', 'built-from'), 'utf8');
forgetOldTickets(db, build);
keepTicketsAtLeisure(db);
keepArchiveAtLeisure(db, build);
const tasks = startTasks({
  db,
  worker: join(root, 'dist', 'worker.js'),
  handlers: { ...taskResults(db, home), ...listenResults(db, home), ...cutResults(db) },
  own: backlogWork(db),
});
const takeUpload = uploadsIn(db, home);

const pages = next({ dev, dir: root, hostname: host, port, quiet: !dev });
await pages.prepare();
const handle = pages.getRequestHandler();
const names = namesOf(host);
const film = /^\/api\/(takes|cuts)\/([0-9a-z]+)\/film$/;

const server = createServer((request, response) => {
  answer(request, response).catch((error: unknown) => sendProblem(response, error));
});
// A film or an upload may take longer than any limit that fits a page.
server.requestTimeout = 0;
// Longer than a person thinks between two touches: a connection that is closed as it is used again fails.
server.keepAliveTimeout = 65_000;
if (dev) server.on('upgrade', pages.getUpgradeHandler());
server.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code !== 'EADDRINUSE') throw error;
  console.error(
    `Port ${port} is taken. Is Benchtake already running? Otherwise choose another: PORT=4681 npm start`,
  );
  void stop(1);
});
server.listen(port, host, () =>
  console.log(
    `Benchtake is ready: http://${host.includes(':') ? `[${host}]` : host}:${port}\nData folder: ${home}`,
  ),
);

async function answer(request: IncomingMessage, response: ServerResponse): Promise<void> {
  for (const [name, value] of Object.entries(plainHeaders)) response.setHeader(name, value);
  const refused = refusal(request, names);
  if (refused) return send(response, refused.status, refused);
  const path = request.url?.split('?')[0] ?? '';
  if (path === uploadsPath || path.startsWith(`${uploadsPath}/`)) return takeUpload(request, response, path);
  const engineFile = engineFileAt(path);
  if (engineFile) return serveEngineFile(request, response, engineFile);
  const [, of, id] = film.exec(path) ?? [];
  if (id !== undefined) {
    if (request.method === 'GET' || request.method === 'HEAD')
      return serveFilm(request, response, pathOfFilm(of === 'cuts', id));
    response.setHeader('allow', 'GET, HEAD');
    return send(response, 405, {
      type: 'about:blank',
      title: 'A film can only be read.',
      status: 405,
      detail: 'Use GET or HEAD.',
    });
  }
  const policy = contentSecurityPolicy(newNonce(), dev);
  request.headers['content-security-policy'] = policy;
  response.setHeader('content-security-policy', policy);
  await handle(request, response);
}

/** The recording of a take, or a public cut that was made. */
function pathOfFilm(isCut: boolean, id: string): string {
  return isCut ? pathOfCut(db, madeCutIdSchema.parse(id)) : filmPathOf(db, home, takeIdSchema.parse(id));
}

function sendProblem(response: ServerResponse, error: unknown): void {
  if (response.headersSent) {
    console.error(error);
    response.destroy();
    return;
  }
  const body = asProblem(error);
  send(response, body.status, body);
}

function send(response: ServerResponse, status: number, body: object): void {
  response.statusCode = status;
  response.setHeader('content-type', problemType);
  response.end(JSON.stringify(body));
}

let stopping = false;
async function stop(code: number): Promise<void> {
  if (stopping) return;
  stopping = true;
  server.close();
  // Event streams and half-watched films would keep the process alive.
  server.closeAllConnections();
  await tasks.stop();
  await pages.close();
  closeDatabase();
  process.exit(code);
}
process.on('SIGTERM', () => void stop(0));
process.on('SIGINT', () => void stop(0));
