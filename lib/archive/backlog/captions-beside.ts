/** Endings that captions have, the best to be read first. */
const endings = ['vtt', 'srt', 'txt'];

/** A language as captions are named by (BCP 47, RFC 5646): en, de-AT, zh-Hant. */
const language = /^[a-z]{2,3}(-[a-z0-9]{2,8})*$/i;

/**
 * The captions that lie beside a recording: the same name with another ending, or with the language before it
 * (`clip.en.vtt`), or behind the whole name (`clip.mp4.srt`).
 * @param beside names of the files in the same folder
 * @returns names, the one to be tried first in front
 */
export function captionsBeside(recording: string, beside: readonly string[]): string[] {
  const whole = folded(recording);
  const stem = stemOf(whole);
  return beside
    .flatMap((name) => {
      const rank = endings.indexOf(endingOf(folded(name)));
      if (rank < 0 || name.startsWith('.')) return [];
      const told = stemOf(folded(name));
      if (told === stem || told === whole) return [{ name, rank, inLanguage: 0 }];
      const spoken = told.slice(stem.length + 1);
      return told.startsWith(`${stem}.`) && language.test(spoken) ? [{ name, rank, inLanguage: 1 }] : [];
    })
    .sort((a, b) => a.rank - b.rank || a.inLanguage - b.inLanguage || (a.name < b.name ? -1 : 1))
    .map(({ name }) => name);
}

/** Whether a file could be captions, by its name. */
export function looksLikeCaptions(name: string): boolean {
  return !name.startsWith('.') && endings.includes(endingOf(folded(name)));
}

/** Name without its last ending. */
export function stemOf(name: string): string {
  const dot = name.lastIndexOf('.');
  return dot > 0 ? name.slice(0, dot) : name;
}

function endingOf(name: string): string {
  return name.slice(name.lastIndexOf('.') + 1);
}

/** Some disks part accents from their letters, and some do not tell capitals. */
function folded(name: string): string {
  return name.normalize('NFC').toLowerCase();
}
