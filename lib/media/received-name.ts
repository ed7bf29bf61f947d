/** Characters that some file system refuses, that end a path, or that hide or turn around what a name says. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: they are what must go.
const unwanted = /[\u0000-\u001f\u007f-\u009f\u200b-\u200f\u2028-\u202e\u2060-\u2069\ufeff\ufffd]/g;
const refused = /[<>:"|?*]/g;
/** Names that still stand for devices on common desktop systems, whatever ending follows. */
const devices = /^(con|prn|aux|nul|conin\$|conout\$|(com|lpt)[0-9¹²³])\s*(\.|$)/i;

/** Room for a number and for file systems that count in bytes (255 on most). */
const mostBytes = 180;
const mostEndingBytes = 12;

/**
 * A file name that every file system takes and no path hides in, as near as possible to the one given.
 * @param given what another device calls its file: any text
 */
export function receivedName(given: string): string {
  const last = given.normalize('NFC').replace(unwanted, '').split(/[\\/]/).at(-1) ?? '';
  const plain = last
    .replace(refused, '-')
    .replace(/^[.\s]+/, '')
    .replace(/[.\s]+$/, '');
  const { stem, ending } = parted(plain);
  const short = cutTo(stem, mostBytes - mostEndingBytes).replace(/[.\s]+$/, '') || 'recording';
  const name = `${short}${ending}`;
  return devices.test(name) ? `_${name}` : name;
}

/** "take.mp4" as "take (2).mp4": the same name once more. */
export function numberedName(name: string, number: number): string {
  const { stem, ending } = parted(name);
  return `${stem} (${number})${ending}`;
}

function parted(name: string): { stem: string; ending: string } {
  const dot = name.lastIndexOf('.');
  const ending = dot > 0 ? name.slice(dot) : '';
  if (ending.length < 2 || bytesOf(ending) > mostEndingBytes) return { stem: name, ending: '' };
  return { stem: name.slice(0, dot), ending };
}

/** Cuts between characters, never inside one. */
function cutTo(text: string, bytes: number): string {
  let kept = '';
  let used = 0;
  for (const character of text) {
    used += bytesOf(character);
    if (used > bytes) break;
    kept += character;
  }
  return kept;
}

function bytesOf(text: string): number {
  return new TextEncoder().encode(text).length;
}
