import type { Probe } from '@/shared/media';

type Playable = Probe['playable'];
type Video = NonNullable<Probe['video']>;
type Audio = Probe['audio'][number];

/** What common browsers play inside each container. From memory and by trial in Chromium. */
const picturesByContainer: Readonly<Record<string, readonly string[]>> = {
  mp4: ['h264', 'av1', 'vp9'],
  mov: ['h264', 'av1', 'vp9'],
  webm: ['vp8', 'vp9', 'av1'],
};
const soundsByContainer: Readonly<Record<string, readonly string[]>> = {
  mp4: ['aac', 'mp3', 'opus', 'flac'],
  mov: ['aac', 'mp3', 'opus', 'flac'],
  webm: ['opus', 'vorbis'],
  ogg: ['opus', 'vorbis', 'flac'],
  mp3: ['mp3'],
  aac: ['aac'],
  flac: ['flac'],
  wav: ['pcm_u8', 'pcm_s16le', 'pcm_s24le', 'pcm_f32le'],
};

/** Pixel formats that browsers decode: 4:2:0, 8 bits; 10 bits for AV1 only. */
const plainPixels = ['yuv420p', 'yuvj420p'];

const spoken: Readonly<Record<string, string>> = {
  hevc: 'H.265 (HEVC)',
  h264: 'H.264',
  prores: 'ProRes',
  mpeg4: 'MPEG-4 Part 2',
  mpeg2video: 'MPEG-2',
  mjpeg: 'Motion JPEG',
  dvvideo: 'DV',
  matroska: 'Matroska (MKV)',
  avi: 'AVI',
  mpegts: 'MPEG transport stream',
  mpeg: 'MPEG program stream',
  ac3: 'AC-3',
};

/** Whether common browsers can play a recording as it is; if not, why. */
export function playableInBrowsers(
  container: string,
  video: Video | null,
  audio: readonly Audio[],
): Playable {
  const sounds = soundsByContainer[container];
  const pictures = picturesByContainer[container];
  if (!sounds || (video && !pictures)) return no(`Not all browsers open ${name(container)} files.`);
  if (video && !pictures?.includes(video.codec))
    return no(`Its picture is ${name(video.codec)}, which not all browsers can show.`);
  if (video && !showsPixels(video))
    return no(
      `Its picture is kept with more colour than browsers can show (${video.pixelFormat ?? 'unknown'}).`,
    );
  const odd = audio.find((stream) => !sounds.includes(stream.codec));
  if (odd) return no(`Its sound is ${name(odd.codec)}, which not all browsers can play.`);
  return { ok: true, reason: null };
}

function showsPixels({ codec, pixelFormat }: Video): boolean {
  if (pixelFormat === null) return false;
  return plainPixels.includes(pixelFormat) || (codec === 'av1' && pixelFormat === 'yuv420p10le');
}

function no(why: string): Playable {
  return { ok: false, reason: `${why} A viewing copy can be made; the recording itself stays as it is.` };
}

function name(code: string): string {
  return spoken[code] ?? code.toUpperCase().replaceAll('_', ' ');
}
