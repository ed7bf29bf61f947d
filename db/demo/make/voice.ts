import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';

export const sampleRateHz = 48_000;

/** A calm southern English voice; the words per minute leave room for a listener to follow. */
const speaker = ['-v', 'en-gb-x-rp+m3', '-s', '152', '-p', '36', '-g', '2'];

/** Takes the buzz off the synthetic voice and puts it into a small room. */
const room = [
  'highpass',
  '85',
  'lowpass',
  '6800',
  'bass',
  '+3',
  '180',
  'treble',
  '-3',
  '4200',
  'reverb',
  '14',
  '60',
  '22',
];

/** Speaks one line into samples at 48 kHz between -1 and 1, without leading or trailing silence. */
export function speak(text: string, folder: string): Float32Array {
  const raw = join(folder, 'line-raw.wav');
  const done = join(folder, 'line.f32');
  execFileSync('espeak-ng', [...speaker, '-w', raw, text]);
  const out = ['-t', 'f32', '-r', String(sampleRateHz), '-c', '1', done];
  const trim = ['silence', '1', '0.005', '0.5%', 'reverse', 'silence', '1', '0.005', '0.5%', 'reverse'];
  execFileSync('sox', ['-G', raw, ...out, ...trim, 'rate', String(sampleRateHz), ...room]);
  const bytes = readFileSync(done);
  return new Float32Array(bytes.buffer.slice(bytes.byteOffset, bytes.byteOffset + bytes.byteLength));
}

export function lengthMs(samples: Float32Array): number {
  return Math.round((samples.length / sampleRateHz) * 1000);
}
