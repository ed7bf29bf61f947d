import { type ChildProcess, spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type Browser, chromium } from 'playwright-core';

/** The built app, running on a port and a data folder of its own. */
export interface App {
  url: string;
  port: number;
  home: string;
  /** Ends the process; `SIGKILL` pulls the plug. */
  stop(signal?: 'SIGTERM' | 'SIGKILL'): Promise<void>;
  /** Starts it again on the same data folder. */
  restart(): Promise<void>;
  pid(): number;
  /** Ends it and throws its data folder away. */
  clear(): Promise<void>;
}

/** Starts `dist/server.js` and waits until it answers. */
export async function startApp(settings: Record<string, string> = {}): Promise<App> {
  const home = mkdtempSync(join(tmpdir(), 'benchtake-app-'));
  const port = await freePort();
  let child = await launch(home, port, settings);
  const stop = (signal: 'SIGTERM' | 'SIGKILL' = 'SIGTERM') => end(child, signal);
  return {
    url: `http://127.0.0.1:${port}`,
    port,
    home,
    stop,
    restart: async () => {
      child = await launch(home, port, settings);
    },
    pid: () => child.pid ?? 0,
    clear: async () => {
      await stop();
      rmSync(home, { recursive: true, force: true });
    },
  };
}

async function launch(home: string, port: number, settings: Record<string, string>): Promise<ChildProcess> {
  const child = spawn(process.execPath, ['dist/server.js'], {
    env: { ...process.env, ...settings, BENCHTAKE_HOME: home, PORT: String(port), NODE_ENV: 'production' },
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  let told = '';
  child.stdout.on('data', (text: Buffer) => {
    told += text.toString();
  });
  child.stderr.on('data', (text: Buffer) => {
    told += text.toString();
  });
  for (let tries = 0; tries < 300; tries++) {
    if (child.exitCode !== null) throw new Error(`The app ended at once:\n${told}`);
    const answer = await fetch(`http://127.0.0.1:${port}/api/health`).catch(() => null);
    if (answer?.ok) return child;
    await new Promise((resolve) => setTimeout(resolve, 100));
  }
  child.kill('SIGKILL');
  throw new Error(`The app did not answer within 30 s:\n${told}`);
}

async function end(child: ChildProcess, signal: 'SIGTERM' | 'SIGKILL'): Promise<void> {
  if (child.exitCode !== null || child.signalCode !== null) return;
  const gone = new Promise((resolve) => child.once('exit', resolve));
  child.kill(signal);
  await gone;
}

async function freePort(): Promise<number> {
  return new Promise((resolve, reject) => {
    const probe = createServer();
    probe.on('error', reject);
    probe.listen(0, '127.0.0.1', () => {
      const address = probe.address();
      probe.close(() =>
        address && typeof address === 'object' ? resolve(address.port) : reject(new Error('no port')),
      );
    });
  });
}

/** Debian's Chromium, asking nobody outside. */
export function launchBrowser(): Promise<Browser> {
  return chromium.launch({
    executablePath: '/usr/bin/chromium',
    args: [
      '--headless',
      '--no-sandbox',
      '--disable-gpu',
      '--disable-quic',
      '--no-first-run',
      '--disable-background-networking',
      '--disable-component-update',
      '--disable-sync',
    ],
  });
}
