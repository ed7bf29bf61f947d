import { DomainError } from '@/shared/problem';

/** A file that is no captions file. `extra.line` and `extra.content` name the first line that could not be read. */
export class CaptionsError extends DomainError {
  constructor(filename: string, line: number, content: string) {
    const shown = content.length > 80 ? `${content.slice(0, 79)}…` : content;
    const what = content === '' ? 'There are no words in it.' : `Line ${line} could not be read: “${shown}”.`;
    super(
      'invalid',
      `${filename} is not a captions file that can be read.`,
      `${what} Use WebVTT, SubRip, or plain lines such as “[1:05] words”.`,
      { line, content: shown },
    );
  }
}
