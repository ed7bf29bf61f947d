/** `avcC`, the settings of an H.264 decoder (ISO/IEC 14496-15, 5.3.3.1). */
interface AvcSettings {
  /** Configuration version, profile, compatibility, level, length size. */
  head: Buffer;
  sps: Buffer[];
  pps: Buffer[];
  /** Chroma format and bit depths, of the High profiles. */
  tail: Buffer;
}

const mostSps = 31;

/** Whether other parameter sets can stand beside these: lengths of four bytes, and a free number. */
export function canMix(settings: Buffer): boolean {
  const read = readAvc(settings);
  if (read?.sps.length !== 1 || ((read.head[4] ?? 0) & 3) !== 3) return false;
  return freeId(settings) !== null;
}

/** A number that neither a sequence nor a picture parameter set of these settings uses; null where none is free. */
export function freeId(settings: Buffer): number | null {
  const read = readAvc(settings);
  if (!read) return null;
  // Profile, compatibility and level stand before the number of a sequence parameter set (ITU-T H.264, 7.3.2.1.1).
  const used = new Set([
    ...read.sps.map((unit) => firstNumber(unit, 4)),
    ...read.pps.map((unit) => firstNumber(unit, 1)),
  ]);
  const free = Array.from({ length: mostSps }, (_, id) => id + 1).find((id) => !used.has(id));
  return free ?? null;
}

/** Settings with the parameter sets of both; each picture says which ones it goes by. Null where one is no `avcC`. */
export function mergeAvc(one: Buffer, other: Buffer): Buffer | null {
  const [a, b] = [readAvc(one), readAvc(other)];
  if (!a || !b) return null;
  const wider = (b.head[1] ?? 0) > (a.head[1] ?? 0) ? b : a;
  const head = Buffer.from(wider.head);
  head[3] = Math.max(a.head[3] ?? 0, b.head[3] ?? 0);
  const sps = [...a.sps, ...b.sps];
  const pps = [...a.pps, ...b.pps];
  const count = (n: number, reserved: number) => Buffer.from([reserved | n]);
  return Buffer.concat([
    head,
    count(sps.length, 0xe0),
    ...sps.map(sized),
    count(pps.length, 0),
    ...pps.map(sized),
    wider.tail,
  ]);
}

function sized(unit: Buffer): Buffer {
  const length = Buffer.alloc(2);
  length.writeUInt16BE(unit.length);
  return Buffer.concat([length, unit]);
}

function readAvc(settings: Buffer): AvcSettings | null {
  if (settings[0] !== 1 || settings.length < 7) return null;
  const sps = units(settings, 6, (settings[5] ?? 0) & 31);
  const pps = sps && units(settings, sps.end + 1, settings[sps.end] ?? 0);
  return pps
    ? { head: settings.subarray(0, 5), sps: sps.units, pps: pps.units, tail: settings.subarray(pps.end) }
    : null;
}

function units(bytes: Buffer, from: number, count: number): { units: Buffer[]; end: number } | null {
  const found: Buffer[] = [];
  let at = from;
  for (let i = 0; i < count; i++) {
    if (at + 2 > bytes.length) return null;
    const end = at + 2 + bytes.readUInt16BE(at);
    if (end > bytes.length) return null;
    found.push(bytes.subarray(at + 2, end));
    at = end;
  }
  return { units: found, end: at };
}

/** The first exponential-Golomb number (ITU-T H.264, 9.1) from a byte of a unit on. */
function firstNumber(unit: Buffer, byte: number): number {
  const bit = (at: number) => ((unit[byte + (at >> 3)] ?? 0) >> (7 - (at & 7))) & 1;
  let zeros = 0;
  while (zeros < 16 && bit(zeros) === 0) zeros += 1;
  let value = 1;
  for (let i = 0; i < zeros; i++) value = value * 2 + bit(zeros + 1 + i);
  return value - 1;
}
