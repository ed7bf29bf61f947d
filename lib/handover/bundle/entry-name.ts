import { numberedName, receivedName } from '@/lib/media';

/** Bytes of a whole path in an archive. */
const mostBytes = 480;
// biome-ignore lint/suspicious/noControlCharactersInRegex: a control character in a name is what is looked for.
const control = /[\u0000-\u001f\u007f-\u009f]/;
/** Characters that are not seen, or that turn round what is seen (Unicode general categories Cf, Zl, Zp, Co, Cn, Cs). */
const hidden = /[\p{Cf}\p{Zl}\p{Zp}\p{Co}\p{Cn}\p{Cs}]/u;
const device = /^(con|prn|aux|nul|conin\$|conout\$|(com|lpt)[0-9¹²³])\s*(\.|$)/i;

/**
 * Why a path in an archive is not to be trusted, in words; null where it is.
 * ZIP Application Note 6.3.10, section 4.4.17.1: no drive or device letter, no leading slash, forward slashes only.
 */
export function faultOfName(name: string): string | null {
  if (name === '') return 'a file has no name';
  if (new TextEncoder().encode(name).length > mostBytes) return 'a name is too long';
  if (control.test(name)) return 'a name holds control characters';
  if (hidden.test(name)) return 'a name holds characters that cannot be seen';
  if (name.includes('\\')) return 'a name holds a backslash';
  if (name.startsWith('/')) return 'a path begins at the root of the drive';
  if (/^[a-z]:/i.test(name)) return 'a path names a drive';
  const steps = name.replace(/\/$/, '').split('/');
  if (steps.some((step) => step === '..')) return 'a path leads out of the archive';
  if (steps.some((step) => step === '' || step === '.')) return 'a path has empty steps';
  if (steps.some((step) => device.test(step))) return 'a name stands for a device';
  if (steps.some((step) => /[<>:"|?*]/.test(step) || /[. ]$/.test(step)))
    return 'a name is one that not every disk takes';
  return null;
}

/** Two names that would be one file on a disk that does not tell capitals or composed letters apart. */
export function sameOnDisk(name: string): string {
  return name.normalize('NFKC').toLowerCase().replace(/\/$/, '');
}

/** Gives names that are free and safe on every disk; a name that comes again is numbered. */
export function namer(): (wanted: string) => string {
  const taken = new Set<string>();
  return (wanted) => {
    const plain = safeName(wanted);
    for (let number = 1; ; number++) {
      const name = number === 1 ? plain : numberedName(plain, number);
      if (taken.has(sameOnDisk(name))) continue;
      taken.add(sameOnDisk(name));
      return name;
    }
  };
}

/** As near as possible to the words of a title or the name of a file. */
function safeName(wanted: string): string {
  const seen = wanted.normalize('NFC').replaceAll(/[/\\]/g, '-').replaceAll(new RegExp(hidden, 'gu'), '');
  return receivedName(seen);
}
