import { AV_LOG_QUIET, AVERROR_EAGAIN, AVERROR_EOF } from 'node-av/constants';
import { Codec, CodecContext, FFmpegError, type Frame, Log, type Packet, type Stream } from 'node-av/lib';
import { problems } from './errors';

// Damaged recordings make FFmpeg talk without end; what matters is told by return codes.
Log.setLevel(AV_LOG_QUIET);

/** Returns a native call's non-negative result; throws what FFmpeg calls its error. */
export function check(code: number, what: string): number {
  if (code < 0) throw problems.broken(`${what}: ${FFmpegError.strerror(code)}`);
  return code;
}

/** A decoder for one stream, or null where this build of FFmpeg has none or it does not start. */
export function openDecoder(stream: Stream, threads: number): CodecContext | null {
  const codec = Codec.findDecoder(stream.codecpar.codecId);
  if (!codec) return null;
  const decoder = new CodecContext();
  decoder.allocContext3(codec);
  check(decoder.parametersToContext(stream.codecpar), 'decoder parameters');
  decoder.pktTimebase = stream.timeBase;
  decoder.threadCount = threads;
  if (decoder.open2Sync(codec, null) >= 0) return decoder;
  decoder.freeContext();
  return null;
}

/**
 * Decodes one packet (null: the end) and hands every frame that comes out to `use`; the frame is used again
 * afterwards. A damaged packet gives no frame and is passed over: most of a lightly damaged film is still good.
 */
export function decode(
  decoder: CodecContext,
  packet: Packet | null,
  frame: Frame,
  use: (frame: Frame) => void,
): void {
  if (decoder.sendPacketSync(packet) < 0 && packet !== null) return;
  for (
    let code = decoder.receiveFrameSync(frame);
    code !== AVERROR_EAGAIN && code !== AVERROR_EOF;
    code = decoder.receiveFrameSync(frame)
  ) {
    if (code < 0) return;
    use(frame);
    frame.unref();
  }
}
