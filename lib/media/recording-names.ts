/** File name endings that recordings have; what a file really is, the probe finds out. */
const endings = new Set(
  (
    'mp4 m4v mov qt mkv webm avi mts m2ts ts mpg mpeg vob 3gp 3g2 mxf wmv asf flv ogv dv ' +
    'wav mp3 m4a aac flac ogg oga opus aif aiff wma'
  ).split(' '),
);

/** Whether a file in a recordings folder is offered as a recording. Hidden files are not. */
export function looksLikeRecording(fileName: string): boolean {
  const dot = fileName.lastIndexOf('.');
  return dot > 0 && !fileName.startsWith('.') && endings.has(fileName.slice(dot + 1).toLowerCase());
}
