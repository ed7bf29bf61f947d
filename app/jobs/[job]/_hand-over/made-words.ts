import { counted } from '@/app/_parts/words';
import type { MadeCut } from '@/shared/cut';
import type { CutInspection } from '@/shared/cut-engine';

/** One thing that was found in a file. `bad`: it is not as it should be. */
export interface FoundInCut {
  what: string;
  found: string;
  bad: boolean;
}

/** A viewer does not notice less: common practice, no source. */
const inStepMs = 40;

/** What a fresh look at a written cut found, in words. */
export function foundInCut({ inspection, result }: Pick<MadeCut, 'inspection' | 'result'>): FoundInCut[] {
  const chapters = inspection.chapters.length;
  const wanted = result.chapters.length;
  return [
    { what: 'Streams', found: streamsInWords(inspection), bad: inspection.streams.length === 0 },
    {
      what: 'Chapters',
      found: chapters === wanted ? countedChapters(chapters) : `${countedChapters(chapters)} of ${wanted}`,
      bad: chapters !== wanted,
    },
    inStep(inspection),
    loudnessOf(inspection),
    tagsOf(inspection),
    { what: 'Picture', found: pictureWords[result.picture], bad: false },
  ].flatMap((found) => found ?? []);
}

function countedChapters(count: number): string {
  return count === 0 ? 'none' : counted(count, 'chapter');
}

const pictureWords: Record<MadeCut['result']['picture'], string> = {
  none: 'none',
  copied: 'copied as it was',
  mixed: 'copied, and encoded anew around the cuts',
  encoded: 'encoded anew',
};

const codecWords: Readonly<Record<string, string>> = {
  h264: 'H.264',
  hevc: 'H.265',
  av1: 'AV1',
  vp9: 'VP9',
  aac: 'AAC',
  opus: 'Opus',
  mp3: 'MP3',
};

function streamsInWords({ streams }: CutInspection): string {
  if (streams.length === 0) return 'none';
  return streams
    .map(({ kind, codec, width, height, sampleRateHz, channels }) => {
      const name = codecWords[codec] ?? codec;
      if (kind === 'picture') return `picture ${name}, ${width} × ${height}`;
      if (kind === 'sound')
        return `sound ${name}, ${(sampleRateHz ?? 0) / 1000} kHz, ${channelWords(channels ?? 0)}`;
      return kind === 'chapters' ? 'chapter track' : `${kind} ${name}`;
    })
    .join('; ');
}

function channelWords(channels: number): string {
  return ['no channel', 'mono', 'stereo'][channels] ?? `${channels} channels`;
}

function inStep({ soundStartsLaterMs, soundEndsLaterMs }: CutInspection): FoundInCut | null {
  if (soundStartsLaterMs === null) return null;
  const bad = Math.abs(soundStartsLaterMs) > inStepMs;
  const start = `the sound begins ${apart(soundStartsLaterMs)}`;
  const end = soundEndsLaterMs === null ? '' : ` and ends ${apart(soundEndsLaterMs)}`;
  return { what: 'Sound and picture', found: `${bad ? 'not in step' : 'in step'}: ${start}${end}`, bad };
}

function apart(laterMs: number): string {
  if (laterMs === 0) return 'with the picture';
  return `${Math.abs(laterMs)} ms ${laterMs > 0 ? 'after' : 'before'} the picture`;
}

function loudnessOf({ loudness }: CutInspection): FoundInCut | null {
  if (!loudness) return null;
  const { integratedLufs, truePeakDbtp } = loudness;
  if (integratedLufs === null) return { what: 'Loudness', found: 'silent', bad: true };
  const peak = truePeakDbtp === null ? '' : `, highest peak ${signed(truePeakDbtp)} dBTP`;
  return {
    what: 'Loudness',
    found: `${signed(integratedLufs)} LUFS${peak}`,
    bad: truePeakDbtp !== null && truePeakDbtp > 0,
  };
}

function signed(level: number): string {
  return level.toFixed(1).replace('-', '−');
}

function tagsOf({ tags, hasPlaceTags, hasDeviceTags }: CutInspection): FoundInCut {
  const left = Object.entries(tags).map(([name, value]) => `${name}: ${value}`);
  const told = [hasPlaceTags && 'a place', hasDeviceTags && 'a device'].filter(Boolean);
  const kept = left.length > 0 ? left.join('; ') : 'none';
  return {
    what: 'Tags left',
    found: told.length > 0 ? `${told.join(' and ')} is told. ${kept}` : `no place, no device. ${kept}`,
    bad: told.length > 0,
  };
}
