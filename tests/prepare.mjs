/**
 * The tests want a few programs that the product itself does not: Debian's Chromium to drive the pages, and
 * independent programs that check what we write. As root on Debian they are installed; elsewhere they are named.
 */
import { spawnSync } from 'node:child_process';

/** Program to look for, and the Debian package that brings it. */
const wanted = [
  ['chromium', 'chromium'],
  ['ffmpeg', 'ffmpeg'],
  ['ffprobe', 'ffmpeg'],
  ['curl', 'curl'],
  ['ngspice', 'ngspice'],
  ['pdfinfo', 'poppler-utils'],
  ['zbarimg', 'zbar-tools'],
  ['mkvmerge', 'mkvtoolnix'],
  ['mkvextract', 'mkvtoolnix'],
  ['unzip', 'unzip'],
];

const missing = wanted.filter(([program]) => spawnSync('sh', ['-c', `command -v ${program}`]).status !== 0);
if (missing.length > 0) {
  const packages = [...new Set(missing.map(([, name]) => name))];
  const canInstall = process.getuid?.() === 0 && spawnSync('sh', ['-c', 'command -v apt-get']).status === 0;
  if (!canInstall) {
    console.error(
      `The tests need these programs: ${packages.join(', ')}.\nOn Debian: sudo apt-get install ${packages.join(' ')}`,
    );
    process.exit(1);
  }
  console.log(`Installing what the tests need: ${packages.join(', ')}`);
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
  spawnSync('apt-get', ['update', '-qq'], { stdio: 'inherit', env });
  const { status } = spawnSync('apt-get', ['install', '-y', '-qq', '--no-install-recommends', ...packages], {
    stdio: 'inherit',
    env,
  });
  if (status !== 0) process.exit(status ?? 1);
}
