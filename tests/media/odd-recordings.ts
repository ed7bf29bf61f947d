import { aac, h264, picture, plain, recording, tone } from './make';

const both = (seconds = 3) => [...picture(seconds), ...tone(seconds)];
const copy = ['-c', 'copy'];

/** Turned by its display matrix, as a phone held otherwise writes it. */
const turned = (degrees: number) =>
  recording(`turned-${degrees}.mp4`, '-i', plain(), ...copy, '-metadata:s:v:0', `rotate=${degrees}`);

/** One click at half a minute. FLAC has no priming, so that minutes can be written one after the other. */
const minute = () =>
  recording(
    'minute.mkv',
    ...picture(60, '64x36', 1),
    ...['-f', 'lavfi', '-i', "aevalsrc='0.8*between(t,30,30.01)':s=8000:d=60"],
    ...[...h264, '-c:a', 'flac'],
  );

/** Recordings as they come from all kinds of cameras, named for what is odd about them. */
export const odd: Readonly<Record<string, () => string>> = {
  'plain MP4': () => plain(),
  'turned by 90': () => turned(90),
  'turned by 180': () => turned(180),
  'turned by 270': () => turned(270),
  'variable rate': () =>
    recording(
      'variable.mp4',
      ...both(4),
      '-vf',
      "select='lt(n,40)+not(mod(n,4))'",
      '-vsync',
      'vfr',
      ...h264,
      ...aac,
    ),
  HEVC: () =>
    recording(
      'hevc.mp4',
      ...both(),
      '-c:v',
      'libx265',
      '-x265-params',
      'log-level=none',
      '-preset',
      'ultrafast',
      ...aac,
    ),
  'HEVC of 10 bits in MOV': () =>
    recording(
      'hevc-10.mov',
      ...both(),
      '-c:v',
      'libx265',
      '-x265-params',
      'log-level=none',
      '-preset',
      'ultrafast',
      '-pix_fmt',
      'yuv420p10le',
      ...aac,
    ),
  AVI: () => recording('old.avi', ...both(), '-c:v', 'mpeg4', '-c:a', 'libmp3lame'),
  'Motion JPEG AVI with PCM': () => recording('mjpeg.avi', ...both(), '-c:v', 'mjpeg', '-c:a', 'pcm_s16le'),
  'MPEG-TS': () => recording('stream.ts', ...both(), ...h264, ...aac),
  'MPEG-2 program stream': () => recording('disc.mpg', ...both(), '-c:v', 'mpeg2video', '-c:a', 'mp2'),
  Matroska: () => recording('plain.mkv', ...both(), ...h264, ...aac),
  'WebM with VP9 and Opus': () =>
    recording(
      'plain.webm',
      ...both(),
      '-c:v',
      'libvpx-vp9',
      '-cpu-used',
      '8',
      '-deadline',
      'realtime',
      '-c:a',
      'libopus',
    ),
  'WebM with VP8 and Vorbis': () =>
    recording('vp8.webm', ...both(), '-c:v', 'libvpx', '-deadline', 'realtime', '-c:a', 'libvorbis'),
  'sound only, M4A': () => recording('memo.m4a', ...tone(3), ...aac),
  'sound only, MP3': () => recording('memo.mp3', ...tone(3), '-c:a', 'libmp3lame'),
  'sound only, WAV': () => recording('memo.wav', ...tone(3)),
  'sound only, FLAC': () => recording('memo.flac', ...tone(3), '-c:a', 'flac'),
  'sound only, Opus': () => recording('memo.opus', ...tone(3), '-c:a', 'libopus'),
  'MP3 with a cover picture': () =>
    recording(
      'cover.mp3',
      ...tone(3),
      ...picture(1),
      '-frames:v',
      '1',
      '-c:v',
      'mjpeg',
      '-c:a',
      'libmp3lame',
      '-disposition:v',
      'attached_pic',
    ),
  'picture only': () => recording('silent.mp4', ...picture(3), ...h264),
  'two sound streams': () =>
    recording(
      'two-sounds.mp4',
      ...both(),
      ...tone(3, 880),
      '-map',
      '0:v',
      '-map',
      '1:a',
      '-map',
      '2:a',
      '-metadata:s:a:0',
      'language=eng',
      ...h264,
      ...aac,
    ),
  '5.1 sound': () =>
    recording(
      'surround.mp4',
      ...both(),
      '-af',
      'pan=5.1|c0=c0|c1=c0|c2=c0|c3=c0|c4=c0|c5=c0',
      ...h264,
      ...aac,
    ),
  'edit list': () => recording('cut.mp4', '-ss', '1.3', '-i', plain(), ...copy),
  'picture starts late': () =>
    recording(
      'late-picture.mp4',
      '-itsoffset',
      '0.7',
      '-i',
      plain(),
      '-i',
      plain(),
      '-map',
      '0:v',
      '-map',
      '1:a',
      ...copy,
    ),
  'sound starts late': () =>
    recording(
      'late-sound.mkv',
      '-itsoffset',
      '0.7',
      '-i',
      plain(),
      '-i',
      plain(),
      '-map',
      '1:v',
      '-map',
      '0:a',
      ...copy,
    ),
  'starts at one hour': () => recording('clock.ts', '-i', plain(), ...copy, '-output_ts_offset', '3600'),
  fragmented: () =>
    recording('fragments.mp4', '-i', plain(), ...copy, '-movflags', '+frag_keyframe+empty_moov'),
  'index at the end': () => recording('index-last.mp4', '-i', plain(), ...copy, '-movflags', '-faststart'),
  'odd size': () =>
    recording(
      'odd-size.mp4',
      ...picture(2, '161x91'),
      '-c:v',
      'libx264',
      '-preset',
      'ultrafast',
      '-pix_fmt',
      'yuv444p',
    ),
  'pixels that are not square': () =>
    recording('anamorphic.mp4', ...picture(2, '144x90'), '-vf', 'setsar=64/45', ...h264),
  'one frame': () => recording('one-frame.mp4', ...picture(1), '-frames:v', '1', ...h264),
  // One minute, written 180 times: it is the length that counts.
  'three hours': () =>
    recording('three-hours.mp4', '-stream_loop', '179', '-i', minute(), ...copy, '-strict', '-2'),
  ProRes: () => recording('prores.mov', ...both(), '-c:v', 'prores_ks', '-c:a', 'pcm_s24le'),
  '10 bits of H.264': () =>
    recording(
      'ten-bits.mp4',
      ...picture(2),
      '-c:v',
      'libx264',
      '-preset',
      'ultrafast',
      '-pix_fmt',
      'yuv420p10le',
    ),
  AV1: () =>
    recording('av1.mp4', ...picture(1), '-c:v', 'libaom-av1', '-cpu-used', '8', '-usage', 'realtime'),
  'name with spaces, quotes and brackets': () =>
    recording(`it's a "neck" pickup (2) [x] %41.mp4`, '-i', plain(), ...copy),
  'name with an emoji and a newline': () => recording('🎸 neck\npickup.mp4', '-i', plain(), ...copy),
  'name with a leading dash': () => recording('-i.mp4', '-i', plain(), ...copy),
  'name that looks like a protocol': () => recording('concat:a|b.mp4', '-i', plain(), ...copy),
};
